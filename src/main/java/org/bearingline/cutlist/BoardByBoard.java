package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills one board after the other, each as fully as any rule can with the pieces that are left. To
 * get the awkward pieces away early, a piece counts with a power of its area.
 */
final class BoardByBoard {

  /** Powers of a piece's area tried in turn; 1 takes whatever fills best. */
  private static final double[] POWERS = {1, 1.08, 1.2, 1.4};

  private final CuttingTask task;
  private final List<FillRule> rules;
  private final double power;
  private final List<List<Layout.Laid>> onBoard = new ArrayList<>();
  private int[] rest;
  private long looks;

  /** The fullest filling of one board. */
  private record Best(int board, List<Layout.Laid> laid, int[] rest, double worth) {}

  private BoardByBoard(CuttingTask task, List<FillRule> rules, double power) {
    this.task = task;
    this.rules = rules;
    this.power = power;
    this.rest = task.counts();
    task.boards().forEach(board -> onBoard.add(List.of()));
  }

  /** No further power is begun after so many pieces were held to free rectangles. */
  private static final long ENOUGH_LOOKS = 5_000_000;

  /** One layout for each power, as many as do not take too long. */
  static List<BoardFill.Filled> layouts(CuttingTask task, List<FillRule> rules) {
    List<BoardFill.Filled> layouts = new ArrayList<>();
    long looks = 0;
    for (double power : POWERS) {
      if (looks > ENOUGH_LOOKS) {
        break;
      }
      BoardByBoard filling = new BoardByBoard(task, rules, power);
      filling.run();
      looks += filling.looks;
      layouts.add(new BoardFill.Filled(new Layout(filling.onBoard, filling.rest), filling.looks));
    }
    return layouts;
  }

  private void run() {
    for (Best best = next(); best != null; best = next()) {
      onBoard.set(best.board(), best.laid());
      rest = best.rest();
    }
  }

  private Best next() {
    Best best = null;
    Board tried = null;
    for (int board = 0; board < onBoard.size(); board++) {
      Board kind = task.boards().get(board).board();
      if (!onBoard.get(board).isEmpty() || kind.equals(tried)) {
        continue;
      }
      tried = kind;
      boolean[] allowed = new boolean[onBoard.size()];
      allowed[board] = true;
      for (FillRule rule : rules) {
        BoardFill.Filled filled = BoardFill.fill(task, rule, allowed, rest);
        looks += filled.looks();
        List<Layout.Laid> laid = filled.layout().onBoard().get(board);
        double worth = worth(laid) / kind.area();
        if (worth > 0 && (best == null || worth > best.worth() * (1 + 1e-12))) {
          best = new Best(board, laid, filled.layout().leftOut(), worth);
        }
      }
    }
    return best;
  }

  private double worth(List<Layout.Laid> laid) {
    double sum = 0;
    for (Layout.Laid piece : laid) {
      sum += Math.pow(task.kinds().get(piece.kind()).area(), power);
    }
    return sum;
  }
}
