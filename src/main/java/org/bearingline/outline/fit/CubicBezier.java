package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/** A cubic Bézier curve by its four control points. */
public record CubicBezier(Point start, Point first, Point second, Point end) implements Curve {

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
