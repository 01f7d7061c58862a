package org.bearingline.routing;

import java.util.Objects;
import org.bearingline.outline.Path;

/**
 * One unbroken stretch of groove, wood on the left of every path.
 *
 * @param edge the part's edge over it, from where the cutter comes into the wood to where it leaves
 * @param floor the floor seen from above, with the round ends of a stopped groove; from edge to
 *     edge of the part
 * @param cutterCentre where the cutter's centre runs while the groove is cut
 * @param startTail mm along the edge by which a stopped groove runs on, getting shallower, past
 *     where it is fully deep; 0 for one that runs through
 * @param endTail the same at the other end
 */
public record GrooveRun(
    Path edge, Path floor, Path cutterCentre, double startTail, double endTail) {

  public GrooveRun {
    Objects.requireNonNull(edge);
    Objects.requireNonNull(floor);
    Objects.requireNonNull(cutterCentre);
  }

  public boolean isStopped() {
    return startTail > 0 || endTail > 0;
  }
}
