package org.bearingline.outline.offset;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.Nesting;

/** Makes a region of stitched loops and checks that each runs the way its nesting asks for. */
final class Regions {

  private Regions() {}

  /**
   * @param reversed whether the loops bound the waste and must be turned round
   */
  static Region of(LoopSet set, boolean reversed, Frame frame) throws Unproven {
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
