package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Betters a layout by taking the pieces of a few boards off and laying them out anew: on less board
 * area, or, where that is not to be had, with one board fuller and another emptier, so that a later
 * turn may do without the emptiest.
 */
final class Repacking {

  /** Boards taken off at a time, the emptiest among them. */
  private static final int TOGETHER = 4;

  private final CuttingTask task;
  private final Effort effort;
  private Layout layout;

  private Repacking(CuttingTask task, Layout layout, Effort effort) {
    this.effort = effort;
    this.task = task;
    this.layout = layout;
  }

  /** A layout as good as the given one or better, as long as the effort lasts. */
  static Layout better(CuttingTask task, Layout layout, Effort effort) {
    Repacking repacking = new Repacking(task, layout, effort);
    repacking.run();
    return repacking.layout;
  }

  private void run() {
    int idle = 0;
    for (int start = 0; !effort.isSpent(); start++) {
      List<Integer> used = emptiestFirst();
      // A whole round without any gain is the end.
      if (used.size() < 2 || idle > used.size()) {
        return;
      }
      idle = repack(chosen(used, start)) ? 0 : idle + 1;
    }
  }

  private List<Integer> emptiestFirst() {
    List<Integer> used = new ArrayList<>();
    for (int board = 0; board < task.boards().size(); board++) {
      if (!layout.onBoard().get(board).isEmpty()) {
        used.add(board);
      }
    }
    used.sort(Comparator.comparingDouble((Integer board) -> fill(layout, board)));
    return used;
  }

  /** The emptiest board and others that follow each other in the order of filling. */
  private static List<Integer> chosen(List<Integer> used, int start) {
    List<Integer> chosen = new ArrayList<>(List.of(used.get(0)));
    for (int i = 0; i < used.size() - 1 && chosen.size() < TOGETHER; i++) {
      chosen.add(used.get(1 + (start + i) % (used.size() - 1)));
    }
    return chosen;
  }

  private boolean repack(List<Integer> chosen) {
    boolean[] allowed = new boolean[task.boards().size()];
    int[] pieces = new int[task.kinds().size()];
    double area = 0;
    for (int board = 0; board < allowed.length; board++) {
      allowed[board] = layout.onBoard().get(board).isEmpty();
    }
    for (int board : chosen) {
      allowed[board] = true;
      area += area(board);
      layout.onBoard().get(board).forEach(piece -> pieces[piece.kind()]++);
    }
    double spread = spread(layout, chosen);
    for (Layout part : BoardByBoard.layouts(task, allowed, pieces, effort)) {
      double now = part.boardArea(task);
      List<Integer> taken = used(part);
      boolean less = now < area * (1 - 1e-9);
      boolean fuller = now < area * (1 + 1e-9) && spread(part, taken) > spread * (1 + 1e-9);
      if (part.isComplete() && (less || fuller)) {
        exchange(chosen, part);
        return true;
      }
    }
    return false;
  }

  private void exchange(List<Integer> chosen, Layout part) {
    List<List<Layout.Laid>> boards = new ArrayList<>();
    for (int board = 0; board < task.boards().size(); board++) {
      List<Layout.Laid> anew = part.onBoard().get(board);
      boards.add(anew.isEmpty() && !chosen.contains(board) ? layout.onBoard().get(board) : anew);
    }
    layout = new Layout(boards, layout.leftOut());
  }

  private static List<Integer> used(Layout layout) {
    List<Integer> used = new ArrayList<>();
    for (int board = 0; board < layout.onBoard().size(); board++) {
      if (!layout.onBoard().get(board).isEmpty()) {
        used.add(board);
      }
    }
    return used;
  }

  private double area(int board) {
    return task.boards().get(board).board().area();
  }

  private double fill(Layout of, int board) {
    double sum = 0;
    for (Layout.Laid piece : of.onBoard().get(board)) {
      sum += task.kinds().get(piece.kind()).area();
    }
    return sum / area(board);
  }

  /** The sum of squares: the larger, the fuller the full boards and the emptier the empty ones. */
  private double spread(Layout of, List<Integer> boards) {
    double sum = 0;
    for (int board : boards) {
      sum += Math.pow(fill(of, board), 2) * area(board);
    }
    return sum;
  }
}
