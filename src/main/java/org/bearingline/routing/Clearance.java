package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Distances between edges, taken at the ends and at even steps of their pieces. */
final class Clearance {

  private static final int STEPS = 16;

  /** Two widths that agree to this, in mm, are even. */
  private static final double EVEN = 0.01;

  private Clearance() {}

  /** Whether a loop lies inside another with at least {@code width} mm between them. */
  static boolean isInside(Loop inner, Loop outer, double width) {
    for (Point p : points(inner)) {
      if (!outer.contains(p)) {
        return false;
      }
    }
    return between(inner, outer) >= width;
  }

  /** Whether two loops lie beside each other with at least {@code width} mm between them. */
  static boolean isApart(Loop a, Loop b, double width) {
    Point onA = a.primitives().get(0).start();
    Point onB = b.primitives().get(0).start();
    return !a.contains(onB) && !b.contains(onA) && between(a, b) >= width;
  }

  /** The width of the band between a loop and one round it, where it is even; else empty. */
  static OptionalDouble evenWidth(Loop inner, Loop outer) {
    Point first = inner.primitives().get(0).middle();
    if (!outer.contains(first)) {
      return OptionalDouble.empty();
    }
    double width = outer.distanceTo(first);
    return isEven(inner, outer, width) && isEven(outer, inner, width)
        ? OptionalDouble.of(width)
        : OptionalDouble.empty();
  }

  private static boolean isEven(Loop from, Loop to, double width) {
    for (Point p : points(from)) {
      if (Math.abs(to.distanceTo(p) - width) > EVEN) {
        return false;
      }
    }
    return true;
  }

  private static double between(Loop a, Loop b) {
    double least = Double.POSITIVE_INFINITY;
    for (Point p : points(a)) {
      least = Math.min(least, b.distanceTo(p));
    }
    for (Point p : points(b)) {
      least = Math.min(least, a.distanceTo(p));
    }
    return least;
  }

  private static List<Point> points(Loop loop) {
    List<Point> points = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      int steps = piece.curvature() == 0 ? 2 : STEPS;
      for (int i = 0; i < steps; i++) {
        points.add(piece.pointAt((double) i / steps));
      }
    }
    return points;
  }
}
