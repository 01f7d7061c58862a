package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * A lower bound on the number of equal boards by dual feasible functions: f on [0, 1] such that
 * shares that add up to no more than 1 are taken to values that add up to no more than 1. For two
 * of them, Σ f(length share) · g(width share) over the pieces of one board is no more than 1, so
 * the sum over all pieces is a lower bound. The functions and the theorem: S. P. Fekete and J.
 * Schepers, "A general framework for bounds for higher-dimensional orthogonal packing problems",
 * Mathematical Methods of Operations Research 60 (2004).
 */
final class DualFeasible {

  /** More limits than this do not pay. */
  private static final int MOST_LIMITS = 12;

  private static final int MOST_STEPS = 5;

  /** Shares this near to each other are equal; far above rounding, far below a saw's kerf. */
  private static final double NEAR = 1e-9;

  private DualFeasible() {}

  /**
   * The bound for pieces on boards of one size, kerfs included in every length.
   *
   * @param sides of each piece, length and width in mm
   * @param mayTurn whether each piece may lie across
   * @param counts how many of each
   */
  static double boards(
      double[][] sides, boolean[] mayTurn, int[] counts, double boardLength, double boardWidth) {
    List<DoubleUnaryOperator> along = functions(sides, mayTurn, 0, boardLength);
    List<DoubleUnaryOperator> across = functions(sides, mayTurn, 1, boardWidth);
    double best = 0;
    for (DoubleUnaryOperator f : along) {
      for (DoubleUnaryOperator g : across) {
        double sum = 0;
        for (int i = 0; i < sides.length; i++) {
          double value = value(f, g, sides[i][0] / boardLength, sides[i][1] / boardWidth);
          if (mayTurn[i]) {
            double other = value(f, g, sides[i][1] / boardLength, sides[i][0] / boardWidth);
            value = Math.min(value, other);
          }
          sum += counts[i] * value;
        }
        best = Math.max(best, sum);
      }
    }
    return best;
  }

  /** A piece that is longer than the board lies the other way: then this way says nothing. */
  private static double value(
      DoubleUnaryOperator f, DoubleUnaryOperator g, double alongShare, double acrossShare) {
    if (alongShare > 1 + NEAR || acrossShare > 1 + NEAR) {
      return Double.POSITIVE_INFINITY;
    }
    return f.applyAsDouble(Math.min(1, alongShare)) * g.applyAsDouble(Math.min(1, acrossShare));
  }

  private static List<DoubleUnaryOperator> functions(
      double[][] sides, boolean[] mayTurn, int axis, double board) {
    List<DoubleUnaryOperator> all = new ArrayList<>();
    all.add(x -> x);
    for (int k = 1; k <= MOST_STEPS; k++) {
      int steps = k;
      all.add(x -> stepped(x, steps));
    }
    TreeSet<Double> limits = new TreeSet<>();
    for (int i = 0; i < sides.length; i++) {
      addLimit(limits, sides[i][axis] / board);
      if (mayTurn[i]) {
        addLimit(limits, sides[i][1 - axis] / board);
      }
    }
    List<Double> ordered = new ArrayList<>(limits);
    int taken = Math.min(MOST_LIMITS, ordered.size());
    for (int i = 0; i < taken; i++) {
      double limit = ordered.get(i * ordered.size() / taken);
      all.add(x -> cleared(x, limit));
    }
    return all;
  }

  private static void addLimit(TreeSet<Double> limits, double share) {
    // A large piece must lie beyond the limit to count whole, a small one must not lie below it.
    double limit = share > 0.5 + NEAR ? Math.min(0.5, 1 - share + 3 * NEAR) : share;
    if (limit > 4 * NEAR && limit <= 0.5 + NEAR) {
      limits.add(Math.min(0.5, limit));
    }
  }

  /** Whole (k + 1)-ths stay; others fall to the k-th below. */
  private static double stepped(double x, int k) {
    double parts = x * (k + 1);
    double whole = Math.rint(parts);
    if (Math.abs(parts - whole) <= NEAR) {
      return x;
    }
    return Math.floor(parts) / k;
  }

  /** Shares above 1 − limit count whole, below the limit not at all. */
  private static double cleared(double x, double limit) {
    if (x > 1 - limit + NEAR) {
      return 1;
    }
    return x < limit - NEAR ? 0 : x;
  }
}
