package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;

/**
 * ∂(T ⊕ D(R)): where the centre of follower and cutter runs, along routed edges and their run-out,
 * wood on the left.
 */
final class CutterPath {

  /** Taken off a radius, in mm, where a bit exactly fits its slot. */
  private static final double JUST_FITS = 1e-5;

  private CutterPath() {}

  /**
   * Paths beside one edge.
   *
   * @param template the region of the plate's edge: the plate for an outer edge, its opening for a
   *     cavity
   */
  static List<Path> of(RoutedEdge edge, Region template, Cutter cutter, Follower follower) {
    Region centre =
        edge.isOutside()
            ? Morphology.dilate(template, follower.radius()).region()
            : Morphology.erode(template, follower.radius()).region();
    if (centre.isEmpty()) {
      // A bit exactly as wide as its slot runs along the middle, there and back.
      centre = Morphology.erode(template, follower.radius() - JUST_FITS).region();
    }
    return Along.followed(woodOnLeft(edge, centre), edge.run(), cutter.radius());
  }

  /** The loops of a region beside an edge, turned so that the wood lies on their left. */
  static List<Loop> woodOnLeft(RoutedEdge edge, Region region) {
    if (edge.isOutside()) {
      return region.loops();
    }
    List<Loop> loops = new ArrayList<>();
    for (Loop loop : region.loops()) {
      loops.add(loop.reversed());
    }
    return loops;
  }
}
