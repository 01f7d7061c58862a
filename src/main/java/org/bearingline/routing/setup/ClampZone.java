package org.bearingline.routing.setup;

import java.util.Objects;
import org.bearingline.outline.Outline;

/**
 * A place where something may stand on the plate while the router passes.
 *
 * @param number from 1, the largest first
 * @param outline the whole foot stays inside it
 * @param reachesEdge whether a clamp can come in over the plate's edge; else only tape, pins or
 *     screws hold there
 */
public record ClampZone(int number, Outline outline, boolean reachesEdge) {

  public ClampZone {
    Objects.requireNonNull(outline);
  }
}
