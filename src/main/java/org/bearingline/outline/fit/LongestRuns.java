package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;

/**
 * Covers a smooth span with biarcs, each as long as the tolerance allows, then evens them out.
 *
 * <p>The ends of a biarc lie on the curve, but not its end directions. Over a length h on which the
 * curvature changes by κ' per mm, an arc chain that keeps the curve's own directions at the ends of
 * each biarc strays by κ' h³ / 324; turned there by −κ' h² / 48, by κ' h³ / 998 only: the
 * monospline of third degree of least deviation, B₃ / 3!, has that slope at its knots. So runs are
 * almost half as long again. At the ends of the span the directions are the curve's.
 */
final class LongestRuns {

  private static final int SAMPLES = 32;

  /** What the samples may miss of a crest between them. */
  private static final double SAMPLED_SHARE = 0.985;

  /** Cosine of the largest angle between a run's chord and the curve on it. */
  private static final double WIDEST = 0.4;

  private static final int HALVINGS = 12;
  private static final int EVENING_STEPS = 7;
  private static final int MOST_RUNS = 20_000;

  private final Span span;

  LongestRuns(Span span) {
    this.span = span;
  }

  /**
   * A biarc over a part of the span.
   *
   * @param to parameter at its end
   * @param direction of travel at its end
   */
  record Run(double from, double to, Point direction, Biarc biarc) {}

  /** As few runs as found within {@code tolerance} mm, with deviations as even as may be. */
  List<Run> cover(double tolerance) {
    List<Run> best = greedy(tolerance, MOST_RUNS);
    double good = 1;
    double bad = 0;
    for (int i = 0; i < EVENING_STEPS; i++) {
      double share = (good + bad) / 2;
      List<Run> tighter = greedy(share * tolerance, best.size());
      if (tighter.isEmpty()) {
        bad = share;
      } else {
        good = share;
        best = tighter;
      }
    }
    return best;
  }

  /** The one biarc over the whole span, if it stays within {@code tolerance} mm. */
  Optional<Run> single(double tolerance) {
    return run(span.from(), span.startDirection(), span.to(), tolerance * SAMPLED_SHARE);
  }

  /** No runs where more than {@code most} would be needed. */
  private List<Run> greedy(double tolerance, int most) {
    List<Run> runs = new ArrayList<>();
    double at = span.from();
    Point direction = span.startDirection();
    double step = span.to() - span.from();
    while (at < span.to()) {
      if (runs.size() == most) {
        return List.of();
      }
      Run longest = longest(at, direction, step, tolerance * SAMPLED_SHARE);
      runs.add(longest);
      step = longest.to() - longest.from();
      at = longest.to();
      direction = longest.direction();
    }
    return runs;
  }

  private Run longest(double at, Point direction, double firstStep, double tolerance) {
    double left = span.to() - at;
    Optional<Run> best = Optional.empty();
    double tooLong = Double.POSITIVE_INFINITY;
    double step = Math.min(firstStep, left);
    // Out from the last run's length until one run is good and the next longer is not.
    while (best.isEmpty() || tooLong == Double.POSITIVE_INFINITY) {
      Optional<Run> run = run(at, direction, step == left ? span.to() : at + step, tolerance);
      if (run.isPresent()) {
        best = run;
        if (step == left) {
          return run.get();
        }
        step = tooLong < Double.POSITIVE_INFINITY ? step : Math.min(2 * step, left);
      } else {
        tooLong = step;
        step = best.isPresent() ? step : step / 2;
        if (at + step == at) {
          throw new IllegalStateException("no arcs follow the curve at parameter " + at);
        }
      }
    }
    double good = best.get().to() - at;
    for (int i = 0; i < HALVINGS && tooLong - good > 1e-3 * good; i++) {
      double middle = (good + tooLong) / 2;
      Optional<Run> run = run(at, direction, at + middle, tolerance);
      if (run.isPresent()) {
        good = middle;
        best = run;
      } else {
        tooLong = middle;
      }
    }
    return best.get();
  }

  private Optional<Run> run(double from, Point direction, double to, double tolerance) {
    Span part = new Span(span.curve(), from, to);
    Point[] points = new Point[SAMPLES + 1];
    double length = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      points[i] = part.at((double) i / SAMPLES);
      length += i == 0 ? 0 : points[i].distanceTo(points[i - 1]);
    }
    if (!keepsToItsChord(points)) {
      return Optional.empty();
    }
    Point end = to == span.to() ? span.endDirection() : turned(to, length, to - from, tolerance);
    return Biarc.between(points[0], direction, points[SAMPLES], end)
        .filter(biarc -> within(biarc, points, tolerance))
        .map(biarc -> new Run(from, to, end, biarc));
  }

  /** The curve's direction at a knot, turned as the head of the class says. */
  private Point turned(double t, double length, double width, double tolerance) {
    Curve curve = span.curve();
    Point direction = curve.directionBefore(t);
    double half = width / 50;
    double before = Math.max(span.from(), t - half);
    double after = Math.min(span.to(), t + half);
    double change = curve.curvatureAt(after) - curve.curvatureAt(before);
    double perMm = change / (curve.velocityAt(t).norm() * (after - before));
    double turn = -perMm * length * length / 48;
    if (!Double.isFinite(turn)) {
      return direction;
    }
    // At a run of full length the turn is 20.8 tolerance / length; more is a spike of curvature.
    double most = 20.8 * tolerance / length;
    double kept = Math.max(-most, Math.min(most, turn));
    return direction.plus(direction.left().times(Math.tan(kept))).unit();
  }

  private static boolean keepsToItsChord(Point[] points) {
    Point chord = points[SAMPLES].minus(points[0]);
    double least = WIDEST * chord.norm();
    for (int i = 1; i <= SAMPLES; i++) {
      Point step = points[i].minus(points[i - 1]);
      if (!(step.dot(chord) > least * step.norm())) {
        return false;
      }
    }
    return true;
  }

  private static boolean within(Biarc biarc, Point[] points, double tolerance) {
    for (int i = 1; i < SAMPLES; i++) {
      if (!(biarc.distanceTo(points[i]) <= tolerance)) {
        return false;
      }
    }
    return true;
  }
}
