package org.bearingline.outside.clean;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A directed straight or circle without ends: a point on it, the unit direction there and the
 * signed curvature in 1/mm, positive to the left. A straight is the circle of curvature 0, so that
 * one formula serves both.
 */
record Carrier(double x, double y, double tx, double ty, double curvature) {

  static Carrier of(Primitive primitive) {
    Point p = primitive.start();
    Point t = primitive.tangentAt(0);
    double curvature = primitive instanceof Arc arc ? Math.signum(arc.sweep()) / arc.radius() : 0;
    return new Carrier(p.x(), p.y(), t.x(), t.y(), curvature);
  }

  /** The centre of a circle. */
  Point center() {
    return new Point(x - ty / curvature, y + tx / curvature);
  }

  /**
   * Signed distance in mm from the carrier to a point, positive to the left: with a along and b to
   * the left of the direction, (2b − κ(a² + b²)) / (1 + √(1 − 2κb + κ²(a² + b²))).
   */
  double off(double px, double py) {
    double dx = px - x;
    double dy = py - y;
    double b = tx * dy - ty * dx;
    if (curvature == 0) {
      return b;
    }
    double q = dx * dx + dy * dy;
    double root = Math.sqrt(Math.max(0, 1 - 2 * curvature * b + curvature * curvature * q));
    return (2 * b - curvature * q) / (1 + root);
  }

  /** The direction of travel in radians at the carrier's point nearest to (px, py). */
  double heading(double px, double py) {
    double dx = px - x;
    double dy = py - y;
    double a = tx * dx + ty * dy;
    double b = tx * dy - ty * dx;
    // The unit normal at the foot is (−κa, 1 − κb) over the root; the direction is square to it.
    double along = 1 - curvature * b;
    double up = curvature * a;
    return Math.atan2(ty * along + tx * up, tx * along - ty * up);
  }

  /** What of the vector (dx, dy) runs along the carrier's direction nearest to (px, py). */
  double along(double px, double py, double dx, double dy) {
    if (curvature == 0) {
      return tx * dx + ty * dy;
    }
    double ex = px - x;
    double ey = py - y;
    double ahead = 1 - curvature * (tx * ey - ty * ex);
    double up = curvature * (tx * ex + ty * ey);
    double root = Math.sqrt(ahead * ahead + up * up);
    return ((tx * ahead - ty * up) * dx + (ty * ahead + tx * up) * dy) / root;
  }

  /** The carrier's point nearest to (px, py). */
  Point foot(double px, double py) {
    double off = off(px, py);
    double heading = heading(px, py);
    return new Point(px + off * Math.sin(heading), py - off * Math.cos(heading));
  }
}
