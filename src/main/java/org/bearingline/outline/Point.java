package org.bearingline.outline;

/**
 * A point or vector of the plane.
 *
 * @param x mm to the right, finite
 * @param y mm upwards, finite
 */
public record Point(double x, double y) {

  public static final Point ORIGIN = new Point(0, 0);

  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point needs finite coordinates, got " + x + ", " + y);
    }
  }

  /** The point at {@code distance} mm from the origin in direction {@code degrees}. */
  public static Point polar(double distance, double degrees) {
    return new Point(distance * Degrees.cos(degrees), distance * Degrees.sin(degrees));
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The z component of the cross product: positive where {@code other} lies to the left. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  public double distanceTo(Point other) {
    double dx = other.x - x;
    double dy = other.y - y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The same direction with length 1; fails on the zero vector. */
  public Point unit() {
    double norm = norm();
    if (norm == 0) {
      throw new IllegalArgumentException("a zero vector has no direction");
    }
    return new Point(x / norm, y / norm);
  }

  /** This vector turned 90° counter-clockwise. */
  public Point left() {
    return new Point(-y, x);
  }

  /** The point at share {@code t} of the way to {@code other}; 0 is here, 1 is there. */
  public Point towards(Point other, double t) {
    return new Point(x + t * (other.x - x), y + t * (other.y - y));
  }

  /** The direction of this vector in degrees, in (-180, 180]. */
  public double degrees() {
    return Degrees.of(this);
  }

  // As a record would compare, written out: it is called for every primitive, and the record's own
  // method is built at run time, which a short command would notice.
  @Override
  public boolean equals(Object other) {
    return other instanceof Point point
        && Double.compare(x, point.x) == 0
        && Double.compare(y, point.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }
}
