package org.bearingline.cutlist;

import java.util.List;

/**
 * Blanks of one size that may be exchanged for each other.
 *
 * @param length mm
 * @param width mm
 * @param mayTurn whether they may lie across the board
 * @param pieces each single blank
 */
record PieceKind(double length, double width, boolean mayTurn, List<Single> pieces) {

  /** One of a blank's quantity. */
  record Single(Blank blank, int number) {}

  PieceKind {
    pieces = List.copyOf(pieces);
  }

  int count() {
    return pieces.size();
  }

  double area() {
    return length * width;
  }

  /** Whether one of them goes on a rectangle of that size. */
  boolean fits(double boardLength, double boardWidth) {
    return lies(length, width, boardLength, boardWidth)
        || mayTurn && lies(width, length, boardLength, boardWidth);
  }

  private static boolean lies(double l, double w, double boardLength, double boardWidth) {
    return l <= boardLength + CuttingTask.ROUNDING && w <= boardWidth + CuttingTask.ROUNDING;
  }
}
