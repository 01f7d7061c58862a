package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What no packing of the pieces can do better than, cut straight through or not: by area with
 * kerfs, by the largest pieces, and by {@link DualFeasible} functions. Boards of different sizes
 * are bounded through the largest of them, on which every smaller board lies.
 */
final class LowerBounds {

  /** Share of a board by which a sum may miss a whole number and still count as it. */
  private static final double SLACK = 1e-6;

  private final CuttingTask task;
  private final int[] counts;
  private final double need;
  private final double bare;
  private final double[][] sides;
  private final boolean[] mayTurn;
  private final Map<List<Double>, Double> bySize = new HashMap<>();

  /** The bounds for that many of each kind. */
  LowerBounds(CuttingTask task, int[] counts) {
    this.task = task;
    this.counts = counts.clone();
    this.sides = new double[counts.length][];
    this.mayTurn = new boolean[counts.length];
    double sum = 0;
    double pieces = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      PieceKind piece = task.kinds().get(kind);
      sum += counts[kind] * task.need(kind);
      pieces += counts[kind] * piece.length() * piece.width();
      mayTurn[kind] = piece.mayTurn();
      sides[kind] = new double[] {piece.length() + task.kerf(), piece.width() + task.kerf()};
    }
    this.need = sum;
    this.bare = pieces;
  }

  /** Whether the pieces may possibly go on the marked boards; false is certain. */
  boolean allow(boolean[] boards) {
    double room = 0;
    double longest = 0;
    double widest = 0;
    int number = 0;
    for (int board = 0; board < boards.length; board++) {
      if (boards[board]) {
        StockBoard on = task.boards().get(board);
        room += task.capacity(board);
        longest = Math.max(longest, on.length() + task.kerf());
        widest = Math.max(widest, on.width() + task.kerf());
        number++;
      }
    }
    return room >= need * (1 - SLACK)
        && everyPieceFitsOneOf(boards)
        && number >= sizeBound(longest, widest) - SLACK;
  }

  private boolean everyPieceFitsOneOf(boolean[] boards) {
    for (int kind = 0; kind < counts.length; kind++) {
      boolean fits = counts[kind] == 0;
      for (int board = 0; board < boards.length && !fits; board++) {
        fits = boards[board] && task.fits(kind, board);
      }
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  private double sizeBound(double longest, double widest) {
    return bySize.computeIfAbsent(
        List.of(longest, widest),
        size -> DualFeasible.boards(sides, mayTurn, counts, longest, widest));
  }

  /** The least number of boards. */
  int boards() {
    List<Double> rooms = new ArrayList<>();
    double longest = 0;
    double widest = 0;
    for (int board = 0; board < task.boards().size(); board++) {
      StockBoard on = task.boards().get(board);
      rooms.add(task.capacity(board));
      longest = Math.max(longest, on.length() + task.kerf());
      widest = Math.max(widest, on.width() + task.kerf());
    }
    rooms.sort(Comparator.reverseOrder());
    int least = 0;
    double room = 0;
    while (room < need * (1 - SLACK) && least < rooms.size()) {
      room += rooms.get(least++);
    }
    return need == 0 ? 0 : Math.max(least, (int) Math.ceil(sizeBound(longest, widest) - SLACK));
  }

  /**
   * The least board area, mm²: boards by the room they give for their area, the last in part. Small
   * boards give the most, for the kerf that each gets added is a larger share of them; where the
   * pieces do not lie on those, their bare area can be the better bound.
   */
  double area() {
    return Math.max(bare * (1 - SLACK), areaByRoom());
  }

  private double areaByRoom() {
    List<Integer> order = new ArrayList<>();
    for (int board = 0; board < task.boards().size(); board++) {
      order.add(board);
    }
    order.sort(Comparator.comparingDouble(this::areaForRoom));
    double missing = need * (1 - SLACK);
    double area = 0;
    for (int board : order) {
      if (missing <= 0) {
        break;
      }
      double taken = Math.min(missing, task.capacity(board));
      area += taken * areaForRoom(board);
      missing -= taken;
    }
    return area;
  }

  private double areaForRoom(int board) {
    return task.boards().get(board).board().area() / task.capacity(board);
  }
}
