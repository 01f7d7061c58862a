package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;

/**
 * Samples of a free curve so close to each other that the chords between stand for it.
 *
 * @param close mm by which the curve may leave them
 */
record CurveSamples(Curve curve, double close) {

  private static final int LEAST_HALVINGS = 3;
  private static final int MOST_HALVINGS = 16;

  /** A point of the curve and its parameter. */
  record Sample(double parameter, Point at) {}

  /** The parameters between which it runs evenly, from 0 to 1. */
  List<Double> cuts() {
    List<Double> cuts = new ArrayList<>();
    int stretches = Math.max(1, curve.stretches());
    for (int i = 0; i <= stretches; i++) {
      cuts.add((double) i / stretches);
    }
    cuts.addAll(curve.breaks());
    return cuts.stream().distinct().sorted().toList();
  }

  /** Those after {@code from}, the last of them {@code to}. */
  List<Sample> between(double from, double to) {
    List<Sample> found = new ArrayList<>();
    Point end = curve.pointAt(to);
    halve(from, curve.pointAt(from), to, end, 0, found);
    found.add(new Sample(to, end));
    return found;
  }

  private void halve(double from, Point a, double to, Point b, int depth, List<Sample> found) {
    if (depth >= MOST_HALVINGS) {
      return;
    }
    double half = (from + to) / 2;
    Point middle = curve.pointAt(half);
    if (depth >= LEAST_HALVINGS
        && off(a, b, middle) <= close
        && off(a, b, curve.pointAt((3 * from + to) / 4)) <= close) {
      return;
    }
    halve(from, a, half, middle, depth + 1, found);
    found.add(new Sample(half, middle));
    halve(half, middle, to, b, depth + 1, found);
  }

  private static double off(Point a, Point b, Point p) {
    return a.equals(b) ? a.distanceTo(p) : new Line(a, b).distanceTo(p);
  }
}
