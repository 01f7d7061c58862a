package org.bearingline.outline.offset;

import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;

/** Distances from points to a set of pieces. */
final class Nearness {

  /** How many neighbours in the order of travel are tried before the index is asked. */
  private static final int NEIGHBOURS = 4;

  private final Pieces pieces;
  private final PieceIndex index;

  Nearness(Pieces pieces) {
    this.pieces = pieces;
    this.index = new PieceIndex(pieces);
  }

  PieceIndex index() {
    return index;
  }

  /**
   * Whether no piece is nearer to (x, y) than {@code limit} mm.
   *
   * @param hint a piece near which an obstacle is likely
   */
  boolean isClear(double x, double y, double limit, int hint) {
    int to = Math.min(pieces.size() - 1, hint + NEIGHBOURS);
    for (int k = Math.max(0, hint - NEIGHBOURS); k <= to; k++) {
      if (pieces.distance(k, x, y) < limit) {
        return false;
      }
    }
    int count = index.query(x - limit, y - limit, x + limit, y + limit);
    int[] hits = index.hits();
    for (int h = 0; h < count; h++) {
      if (pieces.distance(hits[h], x, y) < limit) {
        return false;
      }
    }
    return true;
  }

  /** Distance in mm to the nearest piece no farther than {@code limit}; infinite without one. */
  double within(double x, double y, double limit) {
    return within(x, y, limit, -1);
  }

  /** As above; {@code hint} is a piece likely to be near, which narrows the search. */
  double within(double x, double y, double limit, int hint) {
    double least = Double.POSITIVE_INFINITY;
    nearest = -1;
    double reach = limit;
    if (hint >= 0) {
      least = pieces.distance(hint, x, y);
      nearest = hint;
      reach = Math.min(limit, least);
    }
    int count = index.query(x - reach, y - reach, x + reach, y + reach);
    int[] hits = index.hits();
    for (int h = 0; h < count; h++) {
      double d = pieces.distance(hits[h], x, y);
      if (d < least) {
        least = d;
        nearest = hits[h];
      }
    }
    return least <= limit ? least : Double.POSITIVE_INFINITY;
  }

  private int nearest = -1;

  /** The piece found by the last {@link #within}, −1 without one. */
  int nearest() {
    return nearest;
  }
}
