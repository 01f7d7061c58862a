package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/**
 * A quadratic Bézier curve (a parabola) by its three control points, in mm.
 *
 * @param start where it starts
 * @param control where the tangents of both ends meet
 * @param end where it ends
 */
public record QuadraticBezier(Point start, Point control, Point end) implements Curve {

  @Override
  public Point pointAt(double t) {
    if (t == 1) {
      return end;
    }
    double u = 1 - t;
    return new Point(
        u * u * start.x() + 2 * u * t * control.x() + t * t * end.x(),
        u * u * start.y() + 2 * u * t * control.y() + t * t * end.y());
  }

  @Override
  public Point velocityAt(double t) {
    return control.minus(start).times(2 * (1 - t)).plus(end.minus(control).times(2 * t));
  }

  @Override
  public Point accelerationAt(double t) {
    return end.minus(control).minus(control.minus(start)).times(2);
  }
}
