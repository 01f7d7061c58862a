package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/**
 * How far two sets of edges lie apart: the largest distance from the ends and inner points of each
 * line and arc to the other set, worked from the lines and arcs themselves. Two circles, or a
 * circle and a line, that are not the same meet in two points at most, so edges that agree at every
 * tested point of a piece agree along it.
 */
final class EdgeMatch {

  /** Edges of templates nearer than this, in mm, are one edge: rounding of the offsets. */
  static final double SAME_EDGE = 1e-5;

  private static final double[] SHARES = {0, 0.13, 0.29, 0.5, 0.71, 0.87};

  private EdgeMatch() {}

  /** mm, symmetric; infinite where one set is empty and the other is not. */
  static double deviation(List<Loop> a, List<Loop> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() && b.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
    }
    return Math.max(oneWay(a, b), oneWay(b, a));
  }

  static double deviation(Loop a, Loop b) {
    return deviation(List.of(a), List.of(b));
  }

  static double deviation(Region a, Region b) {
    return deviation(a.loops(), b.loops());
  }

  private static double oneWay(List<Loop> from, List<Loop> to) {
    double most = 0;
    for (Loop loop : from) {
      for (Primitive piece : loop.primitives()) {
        for (double share : SHARES) {
          most = Math.max(most, distance(to, piece.pointAt(share)));
        }
      }
    }
    return most;
  }

  private static double distance(List<Loop> loops, Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      least = Math.min(least, loop.distanceTo(p));
    }
    return least;
  }
}
