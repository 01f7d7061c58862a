package org.bearingline.outside.clean;

import org.bearingline.outline.Point;

/** Tells the corners of a drawing from the joints where it was meant to run on smoothly. */
final class Joints {

  /**
   * Of a smooth curve the best circles before and after a joint differ in direction by up to some
   * 36 tolerances over the shorter length: each strays as a Chebyshev polynomial of third degree,
   * whose slope at its end is 9 to its height 1 over half a length of 1.
   */
  private static final double SLOPE = 36;

  private final Course course;
  private final double sharp;

  Joints(Course course, double sharpDegrees) {
    this.course = course;
    sharp = Math.toRadians(sharpDegrees);
  }

  boolean isCorner(Stretch before, Stretch after, double tolerance) {
    int at = before.to();
    if (course.corner[at] || before.isStraight() && after.isStraight()) {
      return true;
    }
    double turn = turn(before.carrier(), after.carrier(), course.x[at], course.y[at]);
    double shorter =
        Math.min(
            Math.min(course.chord(before), course.chord(after)),
            Math.min(girth(before.carrier()), girth(after.carrier())));
    double slack = before.drawn() && after.drawn() ? 0 : SLOPE * tolerance / shorter;
    return Math.abs(turn) > Math.min(sharp + slack, Math.max(sharp, Math.toRadians(50)));
  }

  private static double girth(Carrier carrier) {
    return carrier.curvature() == 0 ? Double.MAX_VALUE : 2 / Math.abs(carrier.curvature());
  }

  /** Radians between two directions. */
  static double bend(Point in, Point out) {
    return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
  }

  /** Radians from one carrier to another near a place, positive to the left. */
  static double turn(Carrier a, Carrier b, double x, double y) {
    return Math.IEEEremainder(b.heading(x, y) - a.heading(x, y), 2 * Math.PI);
  }
}
