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
          "an ellipse needs two half axes of more than 0, such as 300mm and 150mm");
    }
    if (sweep == 0 || !(Math.abs(sweep) <= 360)) {
      throw new Problem(
          Place.nowhere(), "an arc of an ellipse runs through more than 0° and at most 360°");
    }
  }

  /** A whole counter-clockwise ellipse with axes along x and y, starting on the right. */
  public static EllipseArc whole(Point center, double semiX, double semiY) {
    return new EllipseArc(center, semiX, semiY, 0, 0, 360);
  }

  /**
   * The arc between two points as path data of SVG gives it; half axes too short to span the points
   * are enlarged alike until they do (SVG 1.1, appendix F.6.5 and F.6.6).
   *
   * @param semiAxis half the axis along {@code rotation}, mm, more than 0
   * @param otherSemiAxis half the axis square to it, mm, more than 0
   * @param rotation degrees from the x axis to the first axis, counter-clockwise
   * @param large whether the longer of the two arcs is meant
   * @param counterClockwise sense of travel, y upwards
   */
  public static EllipseArc between(
      Point start,
      Point end,
      double semiAxis,
      double otherSemiAxis,
      double rotation,
      boolean large,
      boolean counterClockwise) {
    if (start.equals(end)) {
      throw new Problem(Place.nowhere(), "an arc of an ellipse needs two different end points");
    }
    // In units of the half axes, along them, the ellipse is a circle of radius 1.
    EllipseArc frame = new EllipseArc(Point.ORIGIN, semiAxis, otherSemiAxis, rotation, 0, 360);
    Point from = frame.toCircle(start);
    Point to = frame.toCircle(end);
    double half = from.distanceTo(to) / 2;
    double grown = Math.max(1, half);
    double apothem = Math.sqrt(Math.max(0, (1 - half / grown) * (1 + half / grown)));
    Point left = to.minus(from).unit().left();
    Point middle = from.towards(to, 0.5);
    boolean centerLeft = large != counterClockwise;
    Point center = middle.plus(left.times((centerLeft ? 1 : -1) * apothem * grown));
    double startAngle = from.minus(center).degrees();
    double turn = Degrees.normalised(to.minus(center).degrees() - startAngle);
    return new EllipseArc(
        frame.turned(new Point(center.x() * semiAxis, center.y() * otherSemiAxis)),
        semiAxis * grown,
        otherSemiAxis * grown,
        rotation,
        startAngle,
        counterClockwise ? turn : turn - 360);
  }

  private Point toCircle(Point p) {
    double c = Degrees.cos(rotation);
    double s = Degrees.sin(rotation);
    return new Point((c * p.x() + s * p.y()) / semiAxis, (c * p.y() - s * p.x()) / otherSemiAxis);
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
