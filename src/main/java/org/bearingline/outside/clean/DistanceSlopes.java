package org.bearingline.outside.clean;

/**
 * The distance of a point from a carrier and how it changes with each of what tells the carrier:
 * the place of its point, its direction and its curvature. Holds the figures of one point at a
 * time, for a fit asks for many.
 */
final class DistanceSlopes {

  /** Square of a root below which a point counts as the circle's centre: no side is nearest. */
  private static final double CENTER = 1e-12;

  private final Carrier carrier;
  private double off;
  private double ahead;
  private double left;
  private double turned;
  private double bent;

  DistanceSlopes(Carrier carrier) {
    this.carrier = carrier;
  }

  /** Works out the figures of a point. */
  void at(double px, double py) {
    double dx = px - carrier.x();
    double dy = py - carrier.y();
    double a = carrier.tx() * dx + carrier.ty() * dy;
    double b = carrier.tx() * dy - carrier.ty() * dx;
    double k = carrier.curvature();
    double q = a * a + b * b;
    double root = Math.sqrt(Math.max(CENTER, 1 - 2 * k * b + k * k * q));
    off = (2 * b - k * q) / (1 + root);
    ahead = -k * a / root;
    left = (1 - k * b) / root;
    turned = ahead * b - left * a;
    bent = (-q * (1 + root) - (2 * b - k * q) * (k * q - b) / root) / ((1 + root) * (1 + root));
  }

  /** Signed distance in mm, as {@link Carrier#off}. */
  double off() {
    return off;
  }

  /** Of the unit normal at the foot what runs along the carrier's direction. */
  double ahead() {
    return ahead;
  }

  /** Of the unit normal at the foot what runs to the left of the carrier's direction. */
  double left() {
    return left;
  }

  /** mm to a radian by which the carrier turns about its point. */
  double turned() {
    return turned;
  }

  /** mm to 1/mm by which the carrier's curvature grows. */
  double bent() {
    return bent;
  }
}
