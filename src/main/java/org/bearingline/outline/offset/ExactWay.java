package org.bearingline.outline.offset;

import org.bearingline.outline.Region;

/** The four operations in lines and arcs, each checked, or {@link Unproven}. */
final class ExactWay {

  private final Region region;
  private final Frame frame;

  ExactWay(Region region, Frame frame) {
    this.region = region;
    this.frame = frame;
  }

  Region dilate(double radius) throws Unproven {
    return Regions.of(
        OffsetStep.dilate(LoopSet.of(region, false, frame), radius, frame), false, frame);
  }

  Region erode(double radius) throws Unproven {
    return Regions.of(
        OffsetStep.dilate(LoopSet.of(region, true, frame), radius, frame), true, frame);
  }

  Region close(double radius) throws Unproven {
    return thereAndBack(radius, false);
  }

  Region open(double radius) throws Unproven {
    return thereAndBack(radius, true);
  }

  // An opening is the closing of the waste.
  private Region thereAndBack(double radius, boolean ofWaste) throws Unproven {
    LoopSet in = LoopSet.of(region, ofWaste, frame);
    LoopSet grown = OffsetStep.dilate(in, radius, frame);
    LoopSet back = OffsetStep.dilate(grown.reversed(), radius, frame).reversed();
    CoverCheck.covers(back, in, ofWaste, frame);
    return Regions.of(back, ofWaste, frame);
  }
}
