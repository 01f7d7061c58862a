package org.bearingline.cutlist;

import java.util.List;

/**
 * What is to be cut from what: pieces and boards that may serve each other.
 *
 * <p>A piece with its kerf, (l + k) × (w + k), on a board with one kerf more, (L + k) × (W + k), is
 * the same task without a kerf; bounds on areas rest on that.
 *
 * @param kinds sizes of pieces
 * @param boards single boards, boards of one kind next to each other
 * @param serves whether a board's material and thickness serve a kind, {@code [kind][board]}
 * @param kerf mm
 */
record CuttingTask(
    List<PieceKind> kinds, List<StockBoard> boards, boolean[][] serves, double kerf) {

  /** Sums of lengths this much too long, in mm, still fit: only rounding made them so. */
  static final double ROUNDING = 1e-6;

  CuttingTask {
    kinds = List.copyOf(kinds);
    boards = List.copyOf(boards);
  }

  boolean fits(int kind, int board) {
    StockBoard on = boards.get(board);
    return serves[kind][board] && kinds.get(kind).fits(on.length(), on.width());
  }

  /** How many there are of each kind; the caller may change the array. */
  int[] counts() {
    return kinds.stream().mapToInt(PieceKind::count).toArray();
  }

  /** Usable area of a board with one kerf more each way, mm². */
  double capacity(int board) {
    StockBoard on = boards.get(board);
    return (on.length() + kerf) * (on.width() + kerf);
  }

  /** Area of a piece with its kerf each way, mm². */
  double need(int kind) {
    PieceKind piece = kinds.get(kind);
    return (piece.length() + kerf) * (piece.width() + kerf);
  }
}
