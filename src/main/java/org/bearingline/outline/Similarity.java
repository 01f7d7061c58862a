package org.bearingline.outline;

/**
 * A map of the plane that keeps shape: turn, move, scale, and mirror. The point (x, y) goes to (a x
 * − m b y + tx, b x + m a y + ty), with m = −1 where mirrored.
 *
 * @param a factor · cos of the turn
 * @param b factor · sin of the turn
 * @param tx mm
 * @param ty mm
 * @param mirrored whether left and right change sides (y is negated before the turn)
 */
public record Similarity(double a, double b, double tx, double ty, boolean mirrored) {

  public Similarity {
    if (!(a * a + b * b > 0) || !Double.isFinite(a * a + b * b + tx + ty)) {
      throw new IllegalArgumentException("a similarity needs a finite factor other than 0");
    }
  }

  public static Similarity identity() {
    return new Similarity(1, 0, 0, 0, false);
  }

  public static Similarity translation(double dx, double dy) {
    return new Similarity(1, 0, dx, dy, false);
  }

  /** Turns by {@code degrees} counter-clockwise about {@code about}. */
  public static Similarity rotation(double degrees, Point about) {
    double c = Degrees.cos(degrees);
    double s = Degrees.sin(degrees);
    return new Similarity(
        c,
        s,
        about.x() - c * about.x() + s * about.y(),
        about.y() - s * about.x() - c * about.y(),
        false);
  }

  /** Mirrors across the straight line through two different points. */
  public static Similarity mirror(Point p, Point q) {
    Point u = q.minus(p).unit();
    double a = u.x() * u.x() - u.y() * u.y();
    double b = 2 * u.x() * u.y();
    return new Similarity(a, b, p.x() - a * p.x() - b * p.y(), p.y() - b * p.x() + a * p.y(), true);
  }

  public static Similarity scaling(double factor) {
    return new Similarity(factor, 0, 0, 0, false);
  }

  /** The scale, more than 0. */
  public double factor() {
    return Math.sqrt(a * a + b * b);
  }

  public Point apply(Point p) {
    double y = mirrored ? -p.y() : p.y();
    return new Point(a * p.x() - b * y + tx, b * p.x() + a * y + ty);
  }

  /** Undoes this one. */
  public Similarity inverse() {
    double square = a * a + b * b;
    double c = a / square;
    double d = (mirrored ? b : -b) / square;
    Similarity turn = new Similarity(c, d, 0, 0, mirrored);
    Point shift = turn.apply(new Point(tx, ty));
    return new Similarity(c, d, -shift.x(), -shift.y(), mirrored);
  }

  /** This map first, then {@code next}. */
  public Similarity then(Similarity next) {
    double sign = next.mirrored ? -1 : 1;
    Point origin = next.apply(apply(Point.ORIGIN));
    return new Similarity(
        next.a * a - next.b * sign * b,
        next.b * a + next.a * sign * b,
        origin.x(),
        origin.y(),
        mirrored != next.mirrored);
  }
}
