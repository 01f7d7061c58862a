package org.bearingline.outline.offset;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.Nesting;

/** The four operations in lines and arcs, each checked, or {@link Unproven}. */
final class ExactWay {

  private final Region region;
  private final Frame frame;

  ExactWay(Region region, double radius) {
    this.region = region;
    this.frame = Frame.of(region, radius);
  }

  double promise() {
    return frame.promise();
  }

  Region dilate(double radius) throws Unproven {
    return toRegion(OffsetStep.dilate(LoopSet.of(region, false, frame), radius, frame), false);
  }

  Region erode(double radius) throws Unproven {
    return toRegion(OffsetStep.dilate(LoopSet.of(region, true, frame), radius, frame), true);
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
    return toRegion(back, ofWaste);
  }

  private Region toRegion(LoopSet set, boolean reversed) throws Unproven {
    List<Loop> loops = set.toLoops(reversed, frame);
    Nesting nesting = Nesting.of(loops);
    for (int i = 0; i < loops.size(); i++) {
      boolean outer = set.signedArea(i) > 0 != reversed;
      if (outer != (nesting.depth(i) % 2 == 0)) {
        int k = set.start(i);
        throw new Unproven("a loop runs the wrong way", set.pieces.x0[k], set.pieces.y0[k], frame);
      }
    }
    return nesting.region();
  }
}
