package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * For few pieces: every way of cutting straight through. Over the boards in turn, each set of
 * pieces is reached by giving one board a set that fits on it; the full set reached with the least
 * board area, then the fewest boards, is the best there is.
 */
final class ExactSearch {

  /** Sets of pieces beyond which it is not tried. */
  private static final int MOST_SETS = 4096;

  /** Steps over boards and sets after which it gives up. */
  private static final long MOST_STEPS = 40_000_000;

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final CuttingTask task;
  private final PieceSets sets;
  private final SetSizes sizes;
  private final List<int[]> onBoard = new ArrayList<>();

  private ExactSearch(CuttingTask task, PieceSets sets, SetSizes sizes) {
    this.task = task;
    this.sets = sets;
    this.sizes = sizes;
  }

  /** The best layout with its board counts proven, or nothing where that is too much work. */
  static Optional<HeuristicSearch.Found> search(CuttingTask task) {
    PieceSets sets = PieceSets.of(task, MOST_SETS);
    if (sets == null) {
      return Optional.empty();
    }
    Optional<SetSizes> sizes = SetSizes.of(task, sets);
    return sizes.flatMap(known -> new ExactSearch(task, sets, known).run());
  }

  private Optional<HeuristicSearch.Found> run() {
    long steps = 0;
    for (int board = 0; board < task.boards().size(); board++) {
      onBoard.add(isLikeBefore(board) ? onBoard.get(board - 1) : fitting(board));
      steps += (long) onBoard.get(board).length * sets.size();
    }
    if (steps > MOST_STEPS) {
      return Optional.empty();
    }
    int[][] given = new int[task.boards().size()][];
    double[] cost = reach(given, true);
    int best = leastLeftOut(cost);
    Layout layout = layout(best, given);
    int fewest = (int) Math.rint(reach(given, false)[best]);
    return Optional.of(new HeuristicSearch.Found(layout, layout.boardArea(task), fewest));
  }

  private boolean isLikeBefore(int board) {
    return board > 0
        && task.boards().get(board).board().equals(task.boards().get(board - 1).board());
  }

  private int[] fitting(int board) {
    List<Integer> fitting = new ArrayList<>();
    for (int set = 1; set < sets.size(); set++) {
      if (sizes.on(set, board).isPresent()) {
        fitting.add(set);
      }
    }
    return fitting.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * The least cost at which each set can be cut: board area with a whisker for each board, so that
   * of equal areas the fewest boards win, or the number of boards alone.
   *
   * @param given filled with the set each board gives when a set is reached
   */
  private double[] reach(int[][] given, boolean byArea) {
    double whole = 0;
    for (StockBoard board : task.boards()) {
      whole += board.board().area();
    }
    double[] cost = new double[sets.size()];
    Arrays.fill(cost, NEVER);
    cost[0] = 0;
    for (int board = 0; board < task.boards().size(); board++) {
      double price = byArea ? task.boards().get(board).board().area() / whole + 1e-9 : 1;
      double[] next = cost.clone();
      given[board] = new int[sets.size()];
      for (int before = 0; before < sets.size(); before++) {
        if (cost[before] != NEVER) {
          give(board, before, cost[before] + price, next, given[board]);
        }
      }
      cost = next;
    }
    return cost;
  }

  private void give(int board, int before, double price, double[] next, int[] given) {
    int full = sets.size() - 1;
    for (int set : onBoard.get(board)) {
      int after = before + set;
      if (after > full) {
        return;
      }
      if (price < next[after]
          && sets.isWithin(set, after)
          && sets.isWithin(before, after)
          && isSum(before, set, after)) {
        next[after] = price;
        given[after] = set;
      }
    }
  }

  /** Whether no digit ran over when two sets were added. */
  private boolean isSum(int a, int b, int sum) {
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      if (sets.count(a, kind) + sets.count(b, kind) != sets.count(sum, kind)) {
        return false;
      }
    }
    return true;
  }

  private int leastLeftOut(double[] cost) {
    int best = 0;
    for (int set = 1; set < sets.size(); set++) {
      if (cost[set] != NEVER) {
        int byArea = Double.compare(area(set), area(best));
        if (byArea > 0 || byArea == 0 && cost[set] < cost[best]) {
          best = set;
        }
      }
    }
    return best;
  }

  private double area(int set) {
    double sum = 0;
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      sum += sets.count(set, kind) * task.kinds().get(kind).area();
    }
    return sum;
  }

  private Layout layout(int full, int[][] given) {
    List<List<Layout.Laid>> boards = new ArrayList<>();
    for (int board = 0; board < task.boards().size(); board++) {
      boards.add(new ArrayList<>());
    }
    int set = full;
    for (int board = task.boards().size() - 1; board >= 0; board--) {
      int here = given[board][set];
      if (here > 0) {
        sizes.lay(sizes.on(here, board).orElseThrow(), 0, 0, boards.get(board));
        set -= here;
      }
    }
    int[] leftOut = new int[task.kinds().size()];
    for (int kind = 0; kind < leftOut.length; kind++) {
      leftOut[kind] = task.kinds().get(kind).count() - sets.count(full, kind);
    }
    return new Layout(boards, leftOut);
  }
}
