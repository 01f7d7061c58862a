package org.bearingline.routing.grain;

import java.util.Objects;
import org.bearingline.outline.Path;

/**
 * A stretch of routed edge that the fibres meet in one way.
 *
 * @param edge name of the edge
 * @param path on the part's edge, in the cutter's direction of travel
 * @param grain what the fibres do there
 */
public record GrainStretch(String edge, Path path, GrainClass grain) {

  public GrainStretch {
    Objects.requireNonNull(edge);
    Objects.requireNonNull(path);
    Objects.requireNonNull(grain);
  }

  /** mm. */
  public double length() {
    return path.length();
  }
}
