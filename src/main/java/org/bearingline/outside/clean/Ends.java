package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Point;

/**
 * Pairs the loose ends of strokes, nearest first. End 2i is the start of stroke i, 2i + 1 its end.
 */
final class Ends {

  /** More ends than this in one place are a blot, not a joint. */
  private static final int MOST_NEAR = 64;

  /** mm by which two distances must differ to count as different. */
  private static final double SAME = 1e-9;

  private final List<Point> points;
  private final List<Point> outward;
  private final double gap;
  private final int[] mate;
  private final List<Point> crowded = new ArrayList<>();

  /**
   * @param points where the ends are
   * @param outward the direction in which the stroke would go on, or null where it has none
   * @param gap mm over which ends may be joined
   */
  Ends(List<Point> points, List<Point> outward, double gap) {
    this.points = points;
    this.outward = outward;
    this.gap = gap;
    mate = new int[points.size()];
    Arrays.fill(mate, -1);
    pair();
  }

  /** The end joined to end {@code e}, −1 where it stays loose. */
  int mate(int e) {
    return mate[e];
  }

  /** Loose ends that had others in reach: places where more than two lines meet. */
  List<Point> crowded() {
    return crowded;
  }

  private record Pair(int a, int b, double apart, double turn) {}

  private void pair() {
    double size = Math.max(gap + SAME, 1e-6);
    Map<Cell, List<Integer>> cells = new HashMap<>();
    for (int e = 0; e < points.size(); e++) {
      cells.computeIfAbsent(Cell.of(points.get(e), size), k -> new ArrayList<>()).add(e);
    }
    List<Pair> pairs = new ArrayList<>();
    for (int e = 0; e < points.size(); e++) {
      Cell own = Cell.of(points.get(e), size);
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          List<Integer> near = cells.getOrDefault(own.beside(dx, dy), List.of());
          for (int other : near.subList(0, Math.min(near.size(), MOST_NEAR))) {
            double apart = points.get(e).distanceTo(points.get(other));
            if (other > e && apart <= gap + SAME) {
              pairs.add(new Pair(e, other, Math.rint(apart / SAME) * SAME, turn(e, other)));
            }
          }
        }
      }
    }
    pairs.sort(
        Comparator.comparingDouble(Pair::apart)
            .thenComparingDouble(Pair::turn)
            .thenComparingInt(Pair::a)
            .thenComparingInt(Pair::b));
    for (Pair pair : pairs) {
      if (mate[pair.a] < 0 && mate[pair.b] < 0) {
        mate[pair.a] = pair.b;
        mate[pair.b] = pair.a;
      }
    }
    for (Pair pair : pairs) {
      if (mate[pair.a] < 0 || mate[pair.b] < 0) {
        crowded.add(points.get(mate[pair.a] < 0 ? pair.a : pair.b));
      }
    }
  }

  // 0 where the one goes straight on as the other, 2 where it turns back.
  private double turn(int a, int b) {
    Point u = outward.get(a);
    Point v = outward.get(b);
    return u == null || v == null ? 1 : Math.rint((1 + u.dot(v)) * 1e9) / 1e9;
  }
}
