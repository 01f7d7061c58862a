package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What can be sawn from one board, by trying every cut at every whole millimetre: slow, and another
 * way than the program's, which never looks at where a cut stands. Sizes and kerf in whole mm.
 */
final class CutPositions {

  private final List<Blank> singles;
  private final int kerf;
  private final Map<List<Integer>, Boolean> known = new HashMap<>();

  /** Pieces with quantity 1. */
  CutPositions(List<Blank> singles, int kerf) {
    this.singles = singles;
    this.kerf = kerf;
  }

  /** Whether the pieces marked in {@code set} come out of a board of that size. */
  boolean canCut(int length, int width, int set) {
    if (set == 0) {
      return true;
    }
    if (length <= 0 || width <= 0) {
      return false;
    }
    List<Integer> key = List.of(length, width, set);
    Boolean before = known.get(key);
    if (before == null) {
      before = tryAll(length, width, set);
      known.put(key, before);
    }
    return before;
  }

  private boolean tryAll(int length, int width, int set) {
    if (Integer.bitCount(set) == 1) {
      Blank one = singles.get(Integer.numberOfTrailingZeros(set));
      return one.length() <= length && one.width() <= width
          || one.mayTurn() && one.width() <= length && one.length() <= width;
    }
    for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      for (int at = 1; at < length; at++) {
        if (canCut(at, width, part) && canCut(length - at - kerf, width, set & ~part)) {
          return true;
        }
      }
      for (int at = 1; at < width; at++) {
        if (canCut(length, at, part) && canCut(length, width - at - kerf, set & ~part)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The least board area for all pieces, mm²; infinite where the boards do not do. */
  double leastArea(List<Board> boards) {
    List<Board> single = new ArrayList<>();
    for (Board board : boards) {
      for (int i = 0; i < board.quantity(); i++) {
        single.add(board);
      }
    }
    return leastArea(single, 0, (1 << singles.size()) - 1);
  }

  private double leastArea(List<Board> boards, int from, int set) {
    if (set == 0) {
      return 0;
    }
    if (from == boards.size()) {
      return Double.POSITIVE_INFINITY;
    }
    Board board = boards.get(from);
    double best = leastArea(boards, from + 1, set);
    for (int part = set; part > 0; part = (part - 1) & set) {
      if (canCut((int) board.length(), (int) board.width(), part)) {
        best = Math.min(best, board.area() + leastArea(boards, from + 1, set & ~part));
      }
    }
    return best;
  }
}
