package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Crossings;
import org.bearingline.outline.topology.Pieces;

/**
 * One exact dilation of loops with wood on their left. An erosion is the dilation of the waste: the
 * same step on the loops travelled the other way.
 */
final class OffsetStep {

  private OffsetStep() {}

  /**
   * The edge of (inside of {@code in}) ⊕ D(distance), checked.
   *
   * @throws Unproven where a check fails
   */
  static LoopSet dilate(LoopSet in, double distance, Frame frame) throws Unproven {
    double tolerance = frame.tolerance();
    Pieces raw = RawOffset.of(in, distance, tolerance);
    Crossings crossings = new Crossings(raw, tolerance);
    crossings.findAll();
    Nearness outline = new Nearness(in.pieces);
    Pieces kept = Keeping.of(raw, crossings.cuts(), outline, distance, tolerance);
    Stitching.Stitched stitched = Stitching.of(kept, tolerance);
    LoopSet out = Merging.of(stitched.loops(), tolerance).withoutCrumbs(tolerance);
    new ResultCheck(in, outline, out, frame).offset(distance, stitched.leftOver());
    return out;
  }
}
