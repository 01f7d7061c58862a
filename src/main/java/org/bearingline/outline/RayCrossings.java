package org.bearingline.outline;

/** Counts how often a primitive crosses the ray from a point to the right, for even-odd tests. */
final class RayCrossings {

  private RayCrossings() {}

  static int count(Primitive piece, Point p) {
    return piece.match(line -> onLine(line, p), arc -> onArc(arc, p));
  }

  // Half-open in y: the lower end counts, the upper does not, so a shared end counts once.
  private static boolean spans(double y, double from, double to) {
    return from <= y != to <= y;
  }

  private static int onLine(Line line, Point p) {
    Point a = line.start();
    Point b = line.end();
    if (!spans(p.y(), a.y(), b.y())) {
      return 0;
    }
    double side = b.minus(a).cross(p.minus(a));
    return (b.y() > a.y() ? side > 0 : side < 0) ? 1 : 0;
  }

  private static int onArc(Arc arc, Point p) {
    double dy = p.y() - arc.center().y();
    if (Math.abs(dy) > arc.radius() + arc.radius() * 1e-6) {
      return 0;
    }
    double whole = Math.abs(arc.sweep());
    double sign = Math.signum(arc.sweep());
    double from = arc.startDegrees();
    // Cut at the top and the bottom of the circle: between them y runs one way.
    double done = 0;
    double y = arc.start().y();
    int count = 0;
    while (done < whole) {
      double at = from + sign * done;
      double next = Math.min(whole, done + toNextTurn(at, sign));
      boolean last = next >= whole;
      double nextY = last ? arc.end().y() : turnY(arc, from + sign * next);
      double middle = Degrees.cos(from + sign * (done + next) / 2);
      if (spans(p.y(), y, nextY)) {
        double half = Math.sqrt(Math.max(0, arc.radius() * arc.radius() - dy * dy));
        double x = arc.center().x() + (middle >= 0 ? half : -half);
        if (x > p.x()) {
          count++;
        }
      }
      y = nextY;
      done = last ? whole : next;
    }
    return count;
  }

  private static double turnY(Arc arc, double degrees) {
    return Degrees.sin(Math.rint(degrees / 90) * 90) > 0
        ? arc.center().y() + arc.radius()
        : arc.center().y() - arc.radius();
  }

  /** Degrees from a direction to the next 90° or 270° in the given sense, in (0, 180]. */
  private static double toNextTurn(double degrees, double sign) {
    double turn = Degrees.normalised(sign > 0 ? degrees - 90 : 90 - degrees) % 180;
    double rest = 180 - turn;
    // A start at the turn itself, give or take rounding, goes on to the next one.
    return rest < 1e-9 ? 180 : rest;
  }
}
