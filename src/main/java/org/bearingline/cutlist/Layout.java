package org.bearingline.cutlist;

import java.util.List;

/**
 * Pieces on boards while the search runs.
 *
 * @param onBoard the pieces on each board of the task, in its order
 * @param leftOut how many of each kind found no place
 */
record Layout(List<List<Laid>> onBoard, int[] leftOut) {

  /** One piece: its kind, its low corner on the usable board in mm, and whether it lies across. */
  record Laid(int kind, double x, double y, boolean turned) {}

  boolean isComplete() {
    for (int count : leftOut) {
      if (count > 0) {
        return false;
      }
    }
    return true;
  }

  /** Less is better: blank area left out, then board area cut into, then boards. */
  boolean isBetterThan(Layout other, CuttingTask task) {
    int byRest = Double.compare(restArea(task), other.restArea(task));
    if (byRest != 0) {
      return byRest < 0;
    }
    int byArea = Double.compare(boardArea(task), other.boardArea(task));
    return byArea != 0 ? byArea < 0 : boardCount() < other.boardCount();
  }

  private double restArea(CuttingTask task) {
    double sum = 0;
    for (int kind = 0; kind < leftOut.length; kind++) {
      sum += leftOut[kind] * task.kinds().get(kind).area();
    }
    return sum;
  }

  double boardArea(CuttingTask task) {
    double sum = 0;
    for (int board = 0; board < onBoard.size(); board++) {
      if (!onBoard.get(board).isEmpty()) {
        sum += task.boards().get(board).board().area();
      }
    }
    return sum;
  }

  int boardCount() {
    int count = 0;
    for (List<Laid> laid : onBoard) {
      count += laid.isEmpty() ? 0 : 1;
    }
    return count;
  }
}
