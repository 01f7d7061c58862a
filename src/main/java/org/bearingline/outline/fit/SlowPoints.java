package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a curve all but stands still: cusps, and the sharp turns beside them. A cusp is a
 * corner; cutting at a sharp turn costs nothing and keeps a run from jumping over it.
 */
final class SlowPoints {

  private static final int SAMPLES = 64;

  /** Share of the highest speed below which a dip of the speed counts. */
  private static final double SLOW = 0.05;

  /** Share of the span beside its ends that is left out: a cusp at an end is no cut. */
  private static final double END_SHARE = 1e-7;

  private SlowPoints() {}

  /** Parameters strictly inside the span, rising. */
  static List<Double> of(Span span) {
    int n = span.samples(SAMPLES);
    double step = (span.to() - span.from()) / n;
    double fastest = 0;
    for (int i = 0; i <= n; i++) {
      fastest = Math.max(fastest, speed(span, span.from() + i * step));
    }
    List<Double> slow = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double low = span.from() + i * step;
      double high = i + 1 == n ? span.to() : span.from() + (i + 1) * step;
      if (gain(span, low) < 0 && gain(span, high) >= 0) {
        double t = slowest(span, low, high);
        double margin = END_SHARE * (span.to() - span.from());
        boolean inside = t - span.from() > margin && span.to() - t > margin;
        if (inside && speed(span, t) < SLOW * fastest) {
          slow.add(t);
        }
      }
    }
    return slow;
  }

  private static double slowest(Span span, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < 60 && b - a > Math.ulp(b); i++) {
      double m = (a + b) / 2;
      if (gain(span, m) < 0) {
        a = m;
      } else {
        b = m;
      }
    }
    return (a + b) / 2;
  }

  /** v · a: below 0 where the curve slows down. */
  private static double gain(Span span, double t) {
    return span.curve().velocityAt(t).dot(span.curve().accelerationAt(t));
  }

  private static double speed(Span span, double t) {
    return span.curve().velocityAt(t).norm();
  }
}
