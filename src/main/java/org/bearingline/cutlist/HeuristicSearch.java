package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bearingline.problem.CutOff;

/**
 * For tasks too large to try everything: sets of boards are taken in the order of their area; those
 * that the lower bounds rule out are passed over, on the others all rules of filling are tried. The
 * first set on which all pieces find room is taken, so what is lost against the best is known.
 */
final class HeuristicSearch {

  /** Sets looked at by the bounds alone. */
  private static final int MOST_SETS = 8_000;

  /** Pieces held to free rectangles, over all tries: a fraction of a second. */
  private static final long MOST_LOOKS = 2_000_000;

  /** Steps of the knapsacks of strips, as much again for laying out anew. */
  private static final long STRIP_STEPS = 25_000_000;

  private final CuttingTask task;
  private final List<FillRule> rules = FillRule.all();
  private long looks;

  private HeuristicSearch(CuttingTask task) {
    this.task = task;
  }

  /**
   * What was found.
   *
   * @param layout the best
   * @param leastArea mm² of board that no packing of its pieces can do with less of
   * @param leastBoards that no packing of its pieces can do with fewer than
   */
  record Found(Layout layout, double leastArea, int leastBoards) {}

  static Found search(CuttingTask task) {
    return new HeuristicSearch(task).run();
  }

  private Found run() {
    boolean[] every = new boolean[task.boards().size()];
    Arrays.fill(every, true);
    Layout best = bestOn(every, Optional.empty());
    Layout strips = best(strips(every));
    best = strips.isBetterThan(best, task) ? strips : best;
    int[] placed = placed(best);
    LowerBounds bounds = new LowerBounds(task, placed);
    double leastArea = bounds.area();
    if (best.isComplete()) {
      Tried tried = bySets(bounds, best);
      best = tried.best();
      leastArea = Math.max(leastArea, tried.leastArea());
    }
    return new Found(best, Math.min(leastArea, best.boardArea(task)), bounds.boards());
  }

  /** Layouts in strips, and what taking boards off and filling them anew makes of them. */
  private List<Layout> strips(boolean[] every) {
    Effort first = new Effort(STRIP_STEPS);
    List<Layout> layouts = new ArrayList<>(BoardByBoard.layouts(task, every, task.counts(), first));
    List<Layout> complete = new ArrayList<>(layouts.stream().filter(Layout::isComplete).toList());
    complete.sort((a, b) -> a.isBetterThan(b, task) ? -1 : b.isBetterThan(a, task) ? 1 : 0);
    for (Layout layout : complete) {
      layouts.add(Repacking.better(task, layout, new Effort(STRIP_STEPS / complete.size())));
    }
    return layouts;
  }

  private Layout best(List<Layout> layouts) {
    Layout best = layouts.get(0);
    for (Layout layout : layouts) {
      best = layout.isBetterThan(best, task) ? layout : best;
    }
    return best;
  }

  private record Tried(Layout best, double leastArea) {}

  private Tried bySets(LowerBounds bounds, Layout start) {
    Layout best = start;
    double least = 0;
    boolean allowedOne = false;
    BoardSets sets = new BoardSets(task);
    looks = 0;
    // The bounds go on where the trying ends, up to the first set that they do not rule out.
    for (int count = 0; count < MOST_SETS && !(allowedOne && looks >= MOST_LOOKS); count++) {
      CutOff.check();
      Optional<boolean[]> next = sets.next();
      if (next.isEmpty()) {
        break;
      }
      double area = area(next.get());
      if (area >= best.boardArea(task) * (1 - 1e-12)) {
        least = allowedOne ? least : best.boardArea(task);
        break;
      }
      // Every set so far is ruled out, so no packing does with less than this one.
      least = allowedOne ? least : area;
      if (bounds.allow(next.get())) {
        allowedOne = true;
        Layout found = bestOn(next.get(), Optional.of(best));
        if (found.isBetterThan(best, task)) {
          best = found;
          break;
        }
      }
    }
    return new Tried(best, least);
  }

  private double area(boolean[] boards) {
    double sum = 0;
    for (int board = 0; board < boards.length; board++) {
      sum += boards[board] ? task.boards().get(board).board().area() : 0;
    }
    return sum;
  }

  /** The best of all rules, or the first that is better than what is known. */
  private Layout bestOn(boolean[] boards, Optional<Layout> known) {
    Layout best = null;
    for (FillRule rule : rules) {
      BoardFill.Filled filled = BoardFill.fill(task, rule, boards, task.counts());
      looks += filled.looks();
      if (best == null || filled.layout().isBetterThan(best, task)) {
        best = filled.layout();
        if (known.isPresent() && best.isBetterThan(known.get(), task)) {
          return best;
        }
      }
      if (looks >= MOST_LOOKS) {
        break;
      }
    }
    return best;
  }

  private int[] placed(Layout layout) {
    int[] placed = new int[task.kinds().size()];
    for (int kind = 0; kind < placed.length; kind++) {
      placed[kind] = task.kinds().get(kind).count() - layout.leftOut()[kind];
    }
    return placed;
  }
}
