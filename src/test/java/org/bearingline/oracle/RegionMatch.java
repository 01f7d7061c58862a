package org.bearingline.oracle;

import org.bearingline.outline.Region;

/**
 * How far two regions that should be equal lie apart, edge to edge, both ways.
 *
 * <p>A slot exactly two radii wide may close or stay open by a hair after a turn of the plane. So a
 * sample far from the other's edge is let off where both regions agree a short step to its left and
 * to its right: then they differ by a sliver thinner than two steps only.
 */
final class RegionMatch {

  /** mm; slivers thinner than twice this do not count. */
  private static final double STEP = 1e-5;

  private static final int PER_EDGE = 9;

  private RegionMatch() {}

  static Deviation between(Region a, Region b) {
    Edges left = Edges.of(a);
    Edges right = Edges.of(b);
    return oneWay(left, right).and(oneWay(right, left));
  }

  private static Deviation oneWay(Edges walked, Edges other) {
    Deviation worst = Deviation.NONE;
    for (int i = 0; i < walked.count(); i++) {
      Edge edge = walked.place(i).edge();
      for (int k = 0; k < PER_EDGE; k++) {
        double t = k / (PER_EDGE - 1.0);
        double x = edge.x(t);
        double y = edge.y(t);
        double apart = other.distance(x, y);
        if (apart <= STEP || !agreeBeside(walked, other, edge, t)) {
          worst = worst.with(apart, x, y);
        }
      }
    }
    return worst;
  }

  private static boolean agreeBeside(Edges walked, Edges other, Edge edge, double t) {
    double normal = edge.heading(t) + Math.PI / 2;
    for (int side = -1; side <= 1; side += 2) {
      double x = edge.x(t) + side * STEP * Math.cos(normal);
      double y = edge.y(t) + side * STEP * Math.sin(normal);
      if (walked.contains(x, y) != other.contains(x, y)) {
        return false;
      }
    }
    return true;
  }

  /** The farthest that an edge of {@code inner} lies outside {@code outer}. */
  static Deviation outside(Region inner, Region outer) {
    Edges walked = Edges.of(inner);
    Edges bounds = Edges.of(outer);
    Deviation worst = Deviation.NONE;
    for (int i = 0; i < walked.count(); i++) {
      Edge edge = walked.place(i).edge();
      for (int k = 0; k < PER_EDGE; k++) {
        double x = edge.x(k / (PER_EDGE - 1.0));
        double y = edge.y(k / (PER_EDGE - 1.0));
        double apart = bounds.distance(x, y);
        // Only what is off the edge needs the dearer inside test.
        worst = worst.with(apart < 1e-9 || bounds.contains(x, y) ? 0 : apart, x, y);
      }
    }
    return worst;
  }
}
