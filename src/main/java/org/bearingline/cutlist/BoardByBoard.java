package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills one board after the other with strips, always the board that comes out fullest. To get the
 * awkward pieces away early, a piece counts with a power of its area.
 */
final class BoardByBoard {

  /** Powers of a piece's area tried in turn; 1 takes whatever fills best. */
  private static final double[] POWERS = {1, 1.08, 1.2, 1.4};

  private final CuttingTask task;
  private final boolean[] allowed;
  private final double power;
  private final Effort effort;
  private final List<List<Layout.Laid>> onBoard = new ArrayList<>();
  private final int[] rest;

  private BoardByBoard(
      CuttingTask task, boolean[] allowed, int[] pieces, double power, Effort effort) {
    this.effort = effort;
    this.task = task;
    this.allowed = allowed;
    this.power = power;
    this.rest = pieces.clone();
    task.boards().forEach(board -> onBoard.add(List.of()));
  }

  /**
   * One layout for each power, on the allowed boards, as many as the effort allows, at least one.
   *
   * @param pieces how many of each kind there are
   * @param effort that this costs
   */
  static List<Layout> layouts(CuttingTask task, boolean[] allowed, int[] pieces, Effort effort) {
    List<Layout> layouts = new ArrayList<>();
    for (double power : POWERS) {
      if (!layouts.isEmpty() && effort.isSpent()) {
        break;
      }
      BoardByBoard filling = new BoardByBoard(task, allowed, pieces, power, effort);
      while (filling.fillOne()) {
        // Until nothing more goes on any board.
      }
      layouts.add(new Layout(filling.onBoard, filling.rest));
    }
    return layouts;
  }

  private boolean fillOne() {
    StripFill.Filled best = null;
    int on = -1;
    double fullest = 0;
    Board tried = null;
    for (int board = 0; board < onBoard.size(); board++) {
      Board kind = task.boards().get(board).board();
      if (!allowed[board] || !onBoard.get(board).isEmpty() || kind.equals(tried)) {
        continue;
      }
      tried = kind;
      StripFill.Filled filled = StripFill.fill(task, board, rest, power, effort);
      double worth = filled.worth() / kind.area();
      if (worth > fullest * (1 + 1e-12)) {
        best = filled;
        on = board;
        fullest = worth;
      }
    }
    if (best == null) {
      return false;
    }
    onBoard.set(on, best.laid());
    best.laid().forEach(piece -> rest[piece.kind()]--);
    return true;
  }
}
