package org.bearingline.outline;

/** Counts how often a primitive crosses the ray from a point to the right, for even-odd tests. */
final class RayCrossings {

  private RayCrossings() {}

  /** The parity is right; an arc that crosses twice may count 0. */
  static int count(Primitive piece, Point p) {
    return piece.match(line -> chord(line, p), arc -> chord(arc, p) + betweenChordAndArc(arc, p));
  }

  private static double side(Primitive piece, Point p) {
    Point a = piece.start();
    Point b = piece.end();
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  // Half-open in y: the lower end counts, the upper does not, so a shared end counts once.
  private static int chord(Primitive piece, Point p) {
    double from = piece.start().y();
    double to = piece.end().y();
    if (from <= p.y() == to <= p.y()) {
      return 0;
    }
    double side = side(piece, p);
    return (to > from ? side > 0 : side < 0) ? 1 : 0;
  }

  // Arc and chord enclose a piece of the disc: a point in it sees one of the two more.
  private static int betweenChordAndArc(Arc arc, Point p) {
    double vx = p.x() - arc.center().x();
    double vy = p.y() - arc.center().y();
    if (vx * vx + vy * vy >= arc.radius() * arc.radius()) {
      return 0;
    }
    if (arc.isFullCircle()) {
      return 1;
    }
    double dx = arc.end().x() - arc.start().x();
    double dy = arc.end().y() - arc.start().y();
    double side = side(arc, p);
    // On the chord itself the point counts as lying above and to the right of it, as above.
    boolean right = side < 0 || (side == 0 && (dy > 0 || (dy == 0 && dx < 0)));
    return right == arc.sweep() > 0 ? 1 : 0;
  }
}
