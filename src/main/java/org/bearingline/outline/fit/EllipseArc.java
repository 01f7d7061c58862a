package org.bearingline.outline.fit;

import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

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

  public EllipseArc {
    if (!(semiAxis > 0 && otherSemiAxis > 0)
        || !Double.isFinite(semiAxis + otherSemiAxis + rotation + from)) {
      throw new Problem(
          Place.nowhere(),
          "An ellipse needs two half axes of more than 0, such as 300mm and 150mm.");
    }
    if (sweep == 0 || !(Math.abs(sweep) <= 360)) {
      throw new Problem(
          Place.nowhere(), "An arc of an ellipse runs through more than 0° and at most 360°.");
    }
  }

  /** A whole counter-clockwise ellipse with axes along x and y, starting on the right. */
  public static EllipseArc whole(Point center, double semiX, double semiY) {
    return new EllipseArc(center, semiX, semiY, 0, 0, 360);
  }

  @Override
  public Point pointAt(double t) {
    return center.plus(turned(at(t, 0)));
  }

  @Override
  public Point velocityAt(double t) {
    return turned(at(t, 90)).times(Math.toRadians(sweep));
  }

  @Override
  public Point accelerationAt(double t) {
    double rate = Math.toRadians(sweep);
    return turned(at(t, 180)).times(rate * rate);
  }

  @Override
  public int stretches() {
    return 4;
  }

  // A derivative by the anomaly is the same ellipse a quarter further on.
  private Point at(double t, double ahead) {
    double anomaly = (t == 1 && Math.abs(sweep) == 360 ? from : from + sweep * t) + ahead;
    return new Point(semiAxis * Degrees.cos(anomaly), otherSemiAxis * Degrees.sin(anomaly));
  }

  private Point turned(Point p) {
    double c = Degrees.cos(rotation);
    double s = Degrees.sin(rotation);
    return new Point(c * p.x() - s * p.y(), s * p.x() + c * p.y());
  }
}
