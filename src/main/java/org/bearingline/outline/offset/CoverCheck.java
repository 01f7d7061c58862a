package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Pieces;

/** Checks that one set of loops covers another: a closing its input, an input its opening. */
final class CoverCheck {

  private CoverCheck() {}

  /**
   * Every piece of {@code inner} lies on or inside {@code outer}, both with wood on the left. With
   * the waste in place of the wood the same test serves an opening.
   *
   * @param unlimited whether the covering side reaches on without end, as the waste does
   */
  static void covers(LoopSet outer, LoopSet inner, boolean unlimited, Frame frame) throws Unproven {
    Nearness edge = new Nearness(outer.pieces);
    Inside inside = new Inside(outer.pieces, edge.index(), unlimited);
    Pieces p = inner.pieces;
    double[] point = new double[2];
    for (int k = 0; k < p.size(); k++) {
      check(edge, inside, p.x0[k], p.y0[k], frame);
      p.middle(k, point);
      check(edge, inside, point[0], point[1], frame);
    }
  }

  private static void check(Nearness edge, Inside inside, double x, double y, Frame frame)
      throws Unproven {
    if (edge.within(x, y, frame.promise()) > frame.promise() && !inside.contains(x, y)) {
      throw new Unproven("the result does not cover the outline", x, y, frame);
    }
  }
}
