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

  private SlowPoints() {}

  /** Parameters strictly inside the span, rising. */
  static List<Double> of(Span span) {
    int n = span.samples(SAMPLES);
    double step = (span.to() - span.from()) / n;
    double[] speed = new double[n + 1];
    double fastest = 0;
    for (int i = 0; i <= n; i++) {
      speed[i] = speed(span, span.from() + i * step);
      fastest = Math.max(fastest, speed[i]);
    }
    List<Double> slow = new ArrayList<>();
    for (int i = 1; i < n; i++) {
      if (speed[i] <= speed[i - 1] && speed[i] < speed[i + 1] && speed[i] < 4 * SLOW * fastest) {
        double t = slowest(span, span.from() + (i - 1) * step, span.from() + (i + 1) * step);
        if (speed(span, t) < SLOW * fastest) {
          slow.add(t);
        }
      }
    }
    return slow;
  }

  // The speed's slope changes sign at its least: v · a = 0.
  private static double slowest(Span span, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < 60 && b - a > Math.ulp(b); i++) {
      double m = (a + b) / 2;
      if (span.curve().velocityAt(m).dot(span.curve().accelerationAt(m)) < 0) {
        a = m;
      } else {
        b = m;
      }
    }
    return (a + b) / 2;
  }

  private static double speed(Span span, double t) {
    return span.curve().velocityAt(t).norm();
  }
}
