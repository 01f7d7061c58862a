package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/**
 * An ellipse or an arc of it.
 *
 * @param center its centre
 * @param semiAxis half the axis that lies along {@code rotation}, mm, more than 0
 * @param otherSemiAxis half the axis square to it, mm, more than 0
 * @param rotation degrees from the x axis to the first axis, counter-clockwise
 * @param from eccentric anomaly of the start in degrees, counted from the first axis
 * @param sweep degrees of eccentric anomaly to the end, counter-clockwise positive, up to 360
 */
public record EllipseArc(
    Point center, double semiAxis, double otherSemiAxis, double rotation, double from, double sweep)
    implements Curve {

  /** A whole counter-clockwise ellipse with axes along x and y. */
  public static EllipseArc whole(Point center, double semiX, double semiY) {
    return new EllipseArc(center, semiX, semiY, 0, 0, 360);
  }

  @Override
  public Point pointAt(double t) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Point velocityAt(double t) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Point accelerationAt(double t) {
    throw new UnsupportedOperationException();
  }
}
