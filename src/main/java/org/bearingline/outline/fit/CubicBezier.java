package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/**
 * A cubic Bézier curve by its four control points, in mm.
 *
 * @param start where it starts
 * @param first the control point it leaves towards
 * @param second the control point it arrives from
 * @param end where it ends
 */
public record CubicBezier(Point start, Point first, Point second, Point end) implements Curve {

  @Override
  public Point pointAt(double t) {
    if (t == 1) {
      return end;
    }
    double u = 1 - t;
    return sum(u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t);
  }

  @Override
  public Point velocityAt(double t) {
    double u = 1 - t;
    return first
        .minus(start)
        .times(3 * u * u)
        .plus(second.minus(first).times(6 * u * t))
        .plus(end.minus(second).times(3 * t * t));
  }

  @Override
  public Point accelerationAt(double t) {
    Point early = second.minus(first).minus(first.minus(start));
    Point late = end.minus(second).minus(second.minus(first));
    return early.times(6 * (1 - t)).plus(late.times(6 * t));
  }

  private Point sum(double a, double b, double c, double d) {
    return new Point(
        a * start.x() + b * first.x() + c * second.x() + d * end.x(),
        a * start.y() + b * first.y() + c * second.y() + d * end.y());
  }
}
