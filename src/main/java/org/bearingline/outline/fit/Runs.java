package org.bearingline.outline.fit;

import java.util.Optional;
import java.util.function.Function;
import org.bearingline.outline.Point;

/** Makes runs over a curve and keeps those that stay within a tolerance of it. */
final class Runs {

  private static final int SAMPLES = 32;

  /** What the samples may miss of a crest between them. */
  private static final double SAMPLED_SHARE = 0.985;

  /** Cosine of the largest angle between a run's chord and the curve on it. */
  private static final double WIDEST = 0.4;

  private final Span span;
  private final double tolerance;

  /** Runs within {@code tolerance} mm of the span, which lie inside of it. */
  Runs(Span span, double tolerance) {
    this.span = span;
    this.tolerance = tolerance * SAMPLED_SHARE;
  }

  /** The biarc between two given directions. */
  Optional<Run> biarc(double from, Point out, double to, Point in) {
    return run(from, to, stretch -> Biarc.between(stretch.start(), out, stretch.end(), in));
  }

  /**
   * The biarc that arrives in the curve's direction turned by −κ' h² / {@code divisor}, where h is
   * its length and κ' the curvature's change per mm.
   */
  Optional<Run> turnedBiarc(double from, Point out, double to, double divisor) {
    return run(
        from,
        to,
        stretch ->
            Biarc.between(stretch.start(), out, stretch.end(), turned(stretch, to, divisor)));
  }

  /** The arc that leaves in a given direction. */
  Optional<Run> arcFrom(double from, Point out, double to) {
    return run(from, to, stretch -> Biarc.leaving(stretch.start(), out, stretch.end()));
  }

  /** The arc that arrives in a given direction. */
  Optional<Run> arcTo(double from, double to, Point in) {
    return run(from, to, stretch -> Biarc.arriving(stretch.start(), stretch.end(), in));
  }

  /** Points of the curve over the run, and the length of their chords. */
  private record Stretch(double from, double to, Point[] points, double length) {
    Point start() {
      return points[0];
    }

    Point end() {
      return points[SAMPLES];
    }
  }

  private Optional<Run> run(double from, double to, Function<Stretch, Optional<Biarc>> made) {
    Stretch stretch = stretch(from, to);
    if (!keepsToItsChord(stretch)) {
      return Optional.empty();
    }
    return made.apply(stretch)
        .filter(biarc -> within(biarc, stretch))
        .map(
            biarc ->
                new Run(from, to, biarc.first().tangentAt(0), biarc.second().tangentAt(1), biarc));
  }

  private Stretch stretch(double from, double to) {
    Span part = new Span(span.curve(), from, to);
    Point[] points = new Point[SAMPLES + 1];
    double length = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      points[i] = part.at((double) i / SAMPLES);
      length += i == 0 ? 0 : points[i].distanceTo(points[i - 1]);
    }
    return new Stretch(from, to, points, length);
  }

  private Point turned(Stretch stretch, double t, double divisor) {
    Curve curve = span.curve();
    Point direction = curve.directionBefore(t);
    double half = (stretch.to() - stretch.from()) / 50;
    double before = Math.max(span.from(), t - half);
    double after = Math.min(span.to(), t + half);
    double change = curve.curvatureAt(after) - curve.curvatureAt(before);
    double perMm = change / (curve.velocityAt(t).norm() * (after - before));
    double turn = -perMm * stretch.length() * stretch.length() / divisor;
    if (!Double.isFinite(turn)) {
      return direction;
    }
    // At a run of full length the turn is 20.8 tolerance / length; more is a spike of curvature.
    double most = 20.8 * tolerance / stretch.length();
    double kept = Math.max(-most, Math.min(most, turn));
    return direction.plus(direction.left().times(Math.tan(kept))).unit();
  }

  private static boolean keepsToItsChord(Stretch stretch) {
    Point chord = stretch.end().minus(stretch.start());
    double least = WIDEST * chord.norm();
    for (int i = 1; i <= SAMPLES; i++) {
      Point step = stretch.points()[i].minus(stretch.points()[i - 1]);
      if (!(step.dot(chord) > least * step.norm())) {
        return false;
      }
    }
    return true;
  }

  private boolean within(Biarc biarc, Stretch stretch) {
    for (int i = 1; i < SAMPLES; i++) {
      if (!(biarc.distanceTo(stretch.points()[i]) <= tolerance)) {
        return false;
      }
    }
    return true;
  }
}
