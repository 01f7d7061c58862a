package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Distances between edges, taken at the ends and at even steps of their pieces. */
final class Clear {

  private static final int STEPS = 16;

  private Clear() {}

  /** Whether every point of a loop lies inside another. */
  static boolean isInside(Loop inner, Loop outer) {
    for (Point p : points(inner)) {
      if (!outer.contains(p)) {
        return false;
      }
    }
    return true;
  }

  /** Whether two loops lie beside each other, neither in nor across the other. */
  static boolean isBeside(Loop a, Loop b) {
    return points(a).stream().noneMatch(b::contains) && points(b).stream().noneMatch(a::contains);
  }

  /** Least distance of two edges, mm. */
  static double between(Loop a, Loop b) {
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
      for (int i = 0; i < STEPS; i++) {
        points.add(piece.pointAt((double) i / STEPS));
      }
    }
    return points;
  }
}
