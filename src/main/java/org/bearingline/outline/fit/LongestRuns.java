package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Covers a smooth span with biarcs, each as long as the tolerance allows, then evens them out.
 *
 * <p>The ends of a biarc lie on the curve, but its end directions are not quite the curve's. Over a
 * length h on which the curvature changes by κ' per mm, biarcs that keep the curve's own directions
 * stray by κ' h³ / 324; with their directions turned by −κ' h² / 48 only by κ' h³ / 998, for the
 * monospline of third degree of least deviation, B₃ / 3!, has that slope at its knots. So runs are
 * almost half as long again. At the ends of the span the directions are the curve's; a single arc
 * there arrives with nearly that turn of itself, and so may stand at either end.
 */
final class LongestRuns {

  /** 48 as above; runs that end early, as beside the span's ends, are better off with less turn. */
  private static final double[] DIVISORS = {48, 56, 66};

  private static final int EVENING_STEPS = 6;
  private static final int MOST_PIECES = 100_000;

  private final Span span;

  LongestRuns(Span span) {
    this.span = span;
  }

  /** How a chain is made: whether single arcs stand at its ends, and how knots are turned. */
  private record Plan(boolean head, boolean tail, double divisor) {}

  /** The one biarc over the whole span, if it stays within {@code tolerance} mm. */
  Optional<Run> single(double tolerance) {
    return new Runs(span, tolerance)
        .biarc(span.from(), span.startDirection(), span.to(), span.endDirection());
  }

  /** As few pieces as found within {@code tolerance} mm, with deviations as even as may be. */
  List<Run> cover(double tolerance) {
    Chain best = new Chain(null, List.of(), MOST_PIECES);
    for (int ends = 0; ends < 4; ends++) {
      best = fewer(best, new Plan(ends % 2 == 1, ends / 2 == 1, DIVISORS[0]), tolerance);
    }
    if (best.plan() == null) {
      throw tooSharp(tolerance);
    }
    Plan ends = best.plan();
    for (int i = 1; i < DIVISORS.length; i++) {
      best = fewer(best, new Plan(ends.head(), ends.tail(), DIVISORS[i]), tolerance);
    }
    return evened(best, tolerance);
  }

  /** A plan carried out, and the number of arcs and lines it took. */
  private record Chain(Plan plan, List<Run> runs, int pieces) {}

  private Chain fewer(Chain best, Plan plan, double tolerance) {
    List<Run> runs = chain(plan, tolerance, best.pieces() - 1);
    return runs.isEmpty() ? best : new Chain(plan, runs, pieces(plan, runs));
  }

  /** The same plan and number of pieces at the least tolerance they can keep. */
  private List<Run> evened(Chain chain, double tolerance) {
    List<Run> runs = chain.runs();
    double good = 1;
    double bad = 0;
    for (int i = 0; i < EVENING_STEPS; i++) {
      double share = (good + bad) / 2;
      List<Run> tighter = chain(chain.plan(), share * tolerance, chain.pieces());
      if (tighter.isEmpty()) {
        bad = share;
      } else {
        good = share;
        runs = tighter;
      }
    }
    return runs;
  }

  private Problem tooSharp(double tolerance) {
    Point where = span.at(0.5);
    return new Problem(
        Place.nowhere(),
        String.format(
            Locale.ROOT,
            "the curve turns too sharply for arcs within %s mm near (%.1f, %.1f);"
                + " draw it rounder or allow more",
            tolerance,
            where.x(),
            where.y()));
  }

  private static int pieces(Plan plan, List<Run> runs) {
    return 2 * runs.size() - (plan.head() ? 1 : 0) - (plan.tail() ? 1 : 0);
  }

  /** Nothing where the plan does not work out or takes more than {@code most} pieces. */
  private List<Run> chain(Plan plan, double tolerance, int most) {
    Runs runs = new Runs(span, tolerance);
    List<Run> chain = new ArrayList<>();
    double from = span.from();
    double to = span.to();
    Point out = span.startDirection();
    Point in = span.endDirection();
    if (plan.head()) {
      double width = to - from;
      Point leaving = out;
      Optional<Run> head =
          Longest.find(width, width, w -> runs.arcFrom(span.from(), leaving, span.from() + w));
      if (head.isEmpty()) {
        return List.of();
      }
      chain.add(head.get());
      from = head.get().to();
      out = head.get().in();
    }
    Optional<Run> tail = Optional.empty();
    if (plan.tail()) {
      double width = to - span.from();
      tail = Longest.find(width, width, w -> runs.arcTo(span.to() - w, span.to(), in));
      if (tail.isEmpty()) {
        return List.of();
      }
      to = tail.get().from();
    }
    if (!(from < to)) {
      return List.of();
    }
    Point arrival = tail.map(Run::out).orElse(in);
    int left = most - (plan.head() ? 1 : 0) - (plan.tail() ? 1 : 0);
    if (!biarcs(runs, from, out, to, arrival, plan.divisor(), left / 2, chain)) {
      return List.of();
    }
    tail.ifPresent(chain::add);
    return chain;
  }

  private static boolean biarcs(
      Runs runs,
      double start,
      Point out,
      double end,
      Point in,
      double divisor,
      int most,
      List<Run> chain) {
    double at = start;
    Point direction = out;
    double guess = end - start;
    for (int i = 0; at < end; i++) {
      if (i >= most) {
        return false;
      }
      double from = at;
      Point leaving = direction;
      Optional<Run> run =
          Longest.find(
              guess,
              end - from,
              width ->
                  width == end - from
                      ? runs.biarc(from, leaving, end, in)
                      : runs.turnedBiarc(from, leaving, from + width, divisor));
      if (run.isEmpty()) {
        return false;
      }
      chain.add(run.get());
      guess = run.get().to() - from;
      at = run.get().to();
      direction = run.get().in();
    }
    return true;
  }
}
