package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/** A quadratic Bézier curve by its three control points. */
public record QuadraticBezier(Point start, Point control, Point end) implements Curve {

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
