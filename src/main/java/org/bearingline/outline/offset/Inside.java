package org.bearingline.outline.offset;

import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;

/**
 * Whether a point lies in the wood that closed loops bound on their left: by the winding number,
 * counted along a ray to the right.
 */
final class Inside {

  private final Pieces pieces;
  private final PieceIndex index;
  private final int least;

  /**
   * @param unlimited whether the wood reaches on without end, as the waste round a part does: there
   *     the number is 0, and −1 in its openings
   */
  Inside(Pieces pieces, PieceIndex index, boolean unlimited) {
    this.pieces = pieces;
    this.index = index;
    this.least = unlimited ? 0 : 1;
  }

  /** Undecided within rounding of the edge. */
  boolean contains(double x, double y) {
    return winding(x, y) >= least;
  }

  /** How often the loops wind round a point, counter-clockwise positive. */
  int winding(double x, double y) {
    int winding = 0;
    int count = index.query(x, y, Double.POSITIVE_INFINITY, y);
    int[] hits = index.hits();
    for (int h = 0; h < count; h++) {
      winding += turns(hits[h], x, y);
    }
    return winding;
  }

  // The chord's crossing of the ray, and one more turn where the point lies between chord and arc.
  private int turns(int k, double x, double y) {
    double ax = pieces.x0[k];
    double ay = pieces.y0[k];
    double dx = pieces.x1[k] - ax;
    double dy = pieces.y1[k] - ay;
    double side = dx * (y - ay) - dy * (x - ax);
    int turns = 0;
    if (ay <= y != pieces.y1[k] <= y) {
      turns = dy > 0 ? (side > 0 ? 1 : 0) : (side < 0 ? -1 : 0);
    }
    if (pieces.turn[k] != 0) {
      if (pieces.power(k, x, y) < 0) {
        // On the chord itself the point counts as lying above and to the right of it.
        boolean right = side < 0 || (side == 0 && (dy > 0 || (dy == 0 && dx < 0)));
        if (pieces.full[k] || right == pieces.turn[k] > 0) {
          turns += pieces.turn[k];
        }
      }
    }
    return turns;
  }
}
