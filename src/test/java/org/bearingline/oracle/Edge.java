package org.bearingline.oracle;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Primitive;

/**
 * One directed edge with geometry of its own, so that a mistake in the values under test cannot
 * excuse itself. Angles in radians, lengths in mm.
 *
 * @param ax start
 * @param ay start
 * @param bx end
 * @param by end
 * @param cx centre of an arc
 * @param cy centre of an arc
 * @param r radius, 0 for a straight edge
 * @param from direction of the start from the centre
 * @param sweep signed turn, counter-clockwise positive
 */
record Edge(
    double ax,
    double ay,
    double bx,
    double by,
    double cx,
    double cy,
    double r,
    double from,
    double sweep) {

  static Edge of(Primitive primitive) {
    return primitive.match(Edge::straight, Edge::round);
  }

  private static Edge straight(Line line) {
    return straight(line.start().x(), line.start().y(), line.end().x(), line.end().y());
  }

  static Edge straight(double ax, double ay, double bx, double by) {
    return new Edge(ax, ay, bx, by, 0, 0, 0, 0, 0);
  }

  private static Edge round(Arc arc) {
    double cx = arc.center().x();
    double cy = arc.center().y();
    double ax = arc.start().x();
    double ay = arc.start().y();
    return new Edge(
        ax,
        ay,
        arc.end().x(),
        arc.end().y(),
        cx,
        cy,
        arc.radius(),
        Math.atan2(ay - cy, ax - cx),
        Math.toRadians(arc.sweep()));
  }

  boolean isArc() {
    return r > 0;
  }

  double length() {
    return isArc() ? r * Math.abs(sweep) : Math.hypot(bx - ax, by - ay);
  }

  double x(double t) {
    return isArc() ? cx + r * Math.cos(from + sweep * t) : ax + t * (bx - ax);
  }

  double y(double t) {
    return isArc() ? cy + r * Math.sin(from + sweep * t) : ay + t * (by - ay);
  }

  /** Direction of travel at share {@code t}. */
  double heading(double t) {
    if (isArc()) {
      return from + sweep * t + (sweep > 0 ? Math.PI / 2 : -Math.PI / 2);
    }
    return Math.atan2(by - ay, bx - ax);
  }

  double minX() {
    return isArc() ? cx - r : Math.min(ax, bx);
  }

  double minY() {
    return isArc() ? cy - r : Math.min(ay, by);
  }

  double maxX() {
    return isArc() ? cx + r : Math.max(ax, bx);
  }

  double maxY() {
    return isArc() ? cy + r : Math.max(ay, by);
  }

  /** Share of the nearest point to (x, y). */
  double foot(double x, double y) {
    if (isArc()) {
      double turn = Math.atan2(y - cy, x - cx) - from;
      double along = (sweep > 0 ? turn : -turn) % (2 * Math.PI);
      if (along < 0) {
        along += 2 * Math.PI;
      }
      if (along <= Math.abs(sweep)) {
        return along / Math.abs(sweep);
      }
      return Math.hypot(x - ax, y - ay) <= Math.hypot(x - bx, y - by) ? 0 : 1;
    }
    double dx = bx - ax;
    double dy = by - ay;
    double t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
    return t <= 0 ? 0 : Math.min(t, 1);
  }

  double distance(double x, double y) {
    double t = foot(x, y);
    if (t == 0) {
      return Math.hypot(x - ax, y - ay);
    }
    if (t == 1) {
      return Math.hypot(x - bx, y - by);
    }
    if (isArc()) {
      return Math.abs(Math.hypot(x - cx, y - cy) - r);
    }
    return Math.hypot(x - x(t), y - y(t));
  }

  /** The angle this edge turns through when looked at from (x, y). */
  double angleSeenFrom(double x, double y) {
    // Adding 0 turns -0 into 0: on the chord itself both branches below must see the same side.
    double cross = (ax - x) * (by - y) - (ay - y) * (bx - x) + 0.0;
    double dot = (ax - x) * (bx - x) + (ay - y) * (by - y);
    boolean closed = ax == bx && ay == by;
    double chord = closed ? 0 : Math.atan2(cross, dot);
    if (!isArc() || Math.hypot(x - cx, y - cy) >= r) {
      return chord;
    }
    // Arc and chord enclose a segment of the circle; from within it the arc is seen the long way.
    // A counter-clockwise arc has that segment on the right of its chord.
    if (sweep > 0) {
      return closed || cross < 0 ? chord + 2 * Math.PI : chord;
    }
    return closed || cross >= 0 ? chord - 2 * Math.PI : chord;
  }
}
