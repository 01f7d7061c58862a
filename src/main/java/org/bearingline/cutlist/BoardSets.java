package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Sets of boards from the least area to the greatest. Each set comes once, though boards may be
 * alike: of boards of one kind the first ones are taken.
 */
final class BoardSets {

  private final CuttingTask task;
  private final List<Integer> byArea = new ArrayList<>();
  private final PriorityQueue<BoardSet> waiting =
      new PriorityQueue<>(
          Comparator.comparingDouble(BoardSet::area)
              .thenComparing(BoardSet::ranks, Arrays::compare));

  /**
   * Some of a task's boards.
   *
   * @param area mm²
   * @param ranks places in the order of area, ascending
   */
  private record BoardSet(double area, int[] ranks) {}

  BoardSets(CuttingTask task) {
    this.task = task;
    for (int board = 0; board < task.boards().size(); board++) {
      byArea.add(board);
    }
    byArea.sort(Comparator.comparingDouble(board -> task.boards().get(board).board().area()));
    if (!byArea.isEmpty()) {
      waiting.add(new BoardSet(area(0), new int[] {0}));
    }
  }

  private Board board(int rank) {
    return task.boards().get(byArea.get(rank)).board();
  }

  private double area(int rank) {
    return board(rank).area();
  }

  /** The set of next larger area, as marks on the task's boards; empty when there are no more. */
  Optional<boolean[]> next() {
    BoardSet set = waiting.poll();
    if (set == null) {
      return Optional.empty();
    }
    follow(set);
    boolean[] marks = new boolean[byArea.size()];
    for (int rank : set.ranks()) {
      marks[byArea.get(rank)] = true;
    }
    return Optional.of(marks);
  }

  /**
   * From a set come two, neither smaller: the next board added, or the last board exchanged for the
   * first of the next kind. So every set has one forerunner and comes once.
   */
  private void follow(BoardSet set) {
    int size = set.ranks().length;
    int last = set.ranks()[size - 1];
    if (last + 1 < byArea.size()) {
      int[] more = Arrays.copyOf(set.ranks(), size + 1);
      more[size] = last + 1;
      waiting.add(new BoardSet(set.area() + area(last + 1), more));
    }
    int other = last + 1;
    while (other < byArea.size() && board(other).equals(board(last))) {
      other++;
    }
    if (other < byArea.size()) {
      int[] exchanged = set.ranks().clone();
      exchanged[size - 1] = other;
      waiting.add(new BoardSet(set.area() - area(last) + area(other), exchanged));
    }
  }
}
