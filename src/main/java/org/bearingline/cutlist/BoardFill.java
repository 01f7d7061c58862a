package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills boards by one {@link FillRule}: each piece goes to the low corner of a free rectangle, and
 * two straight cuts part the rest of it into two new ones. So every layout can be sawn with cuts
 * that go right through.
 */
final class BoardFill {

  private final CuttingTask task;
  private final FillRule rule;
  private final List<Free> free = new ArrayList<>();
  private final List<List<Layout.Laid>> onBoard = new ArrayList<>();
  private final int[] rest;
  private long looks;

  /** A rectangle of a board that is still whole. */
  private record Free(int board, double x, double y, double length, double width) {}

  private record Spot(int kind, int free, boolean turned, double waste) {}

  private BoardFill(CuttingTask task, FillRule rule, boolean[] allowed, int[] pieces) {
    this.task = task;
    this.rule = rule;
    this.rest = pieces.clone();
    for (int board = 0; board < task.boards().size(); board++) {
      onBoard.add(new ArrayList<>());
      if (allowed[board]) {
        StockBoard on = task.boards().get(board);
        free.add(new Free(board, 0, 0, on.length(), on.width()));
      }
    }
  }

  /**
   * A layout with how much work it was.
   *
   * @param layout on the allowed boards
   * @param looks how often a piece was held to a free rectangle
   */
  record Filled(Layout layout, long looks) {}

  /**
   * Fills the allowed boards.
   *
   * @param pieces how many of each kind there are
   */
  static Filled fill(CuttingTask task, FillRule rule, boolean[] allowed, int[] pieces) {
    BoardFill fill = new BoardFill(task, rule, allowed, pieces);
    List<Integer> order = rule.order().sorted(task.kinds());
    if (rule.order() == FillRule.Order.BEST_MATCH) {
      fill.byMatch(order);
    } else {
      fill.inOrder(order);
    }
    return new Filled(new Layout(fill.onBoard, fill.rest), fill.looks);
  }

  private void inOrder(List<Integer> order) {
    for (int kind : order) {
      while (rest[kind] > 0) {
        Spot spot = best(kind, null);
        if (spot == null) {
          break;
        }
        place(spot);
      }
    }
  }

  private void byMatch(List<Integer> order) {
    while (true) {
      Spot best = null;
      for (int kind : order) {
        if (rest[kind] > 0) {
          best = best(kind, best);
        }
      }
      if (best == null) {
        return;
      }
      place(best);
    }
  }

  private Spot best(int kind, Spot soFar) {
    PieceKind piece = task.kinds().get(kind);
    Spot best = soFar;
    for (int i = 0; i < free.size(); i++) {
      Free here = free.get(i);
      if (task.serves()[kind][here.board()]) {
        best = better(best, kind, i, piece.length(), piece.width(), false);
        if (piece.mayTurn() && piece.length() != piece.width()) {
          best = better(best, kind, i, piece.width(), piece.length(), true);
        }
      }
    }
    return best;
  }

  private Spot better(Spot best, int kind, int at, double length, double width, boolean turned) {
    looks++;
    Free here = free.get(at);
    double restLength = here.length() - length;
    double restWidth = here.width() - width;
    if (restLength < -CuttingTask.ROUNDING || restWidth < -CuttingTask.ROUNDING) {
      return best;
    }
    double area = here.length() * here.width();
    double waste = rule.choice().waste(restLength, restWidth, area, here.board());
    return best == null || waste < best.waste() - CuttingTask.ROUNDING
        ? new Spot(kind, at, turned, waste)
        : best;
  }

  private void place(Spot spot) {
    PieceKind piece = task.kinds().get(spot.kind());
    Free here = free.remove(spot.free());
    rest[spot.kind()]--;
    onBoard.get(here.board()).add(new Layout.Laid(spot.kind(), here.x(), here.y(), spot.turned()));
    double length = spot.turned() ? piece.width() : piece.length();
    double width = spot.turned() ? piece.length() : piece.width();
    double restLength = here.length() - length - task.kerf();
    double restWidth = here.width() - width - task.kerf();
    boolean rip =
        rule.split().ripsFirst(length, width, Math.max(0, restLength), Math.max(0, restWidth));
    double beside = here.x() + length + task.kerf();
    double above = here.y() + width + task.kerf();
    add(here.board(), beside, here.y(), restLength, rip ? width : here.width());
    add(here.board(), here.x(), above, rip ? here.length() : length, restWidth);
  }

  private void add(int board, double x, double y, double length, double width) {
    if (length > CuttingTask.ROUNDING && width > CuttingTask.ROUNDING) {
      free.add(new Free(board, x, y, length, width));
    }
  }
}
