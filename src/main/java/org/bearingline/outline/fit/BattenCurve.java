package org.bearingline.outline.fit;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;

/**
 * The curve of a thin batten bent through points: an interpolating cubic spline over the chord
 * lengths.
 */
public final class BattenCurve implements Curve {

  private BattenCurve() {}

  /** Through two or more points with free ends (natural spline). */
  public static BattenCurve through(List<Point> points) {
    return through(points, Optional.empty(), Optional.empty());
  }

  /** Through two or more points; a given direction of travel (any length) holds an end. */
  public static BattenCurve through(
      List<Point> points, Optional<Point> startDirection, Optional<Point> endDirection) {
    throw new UnsupportedOperationException();
  }

  /** Closed and smooth through three or more points, the first not repeated. */
  public static BattenCurve closed(List<Point> points) {
    throw new UnsupportedOperationException();
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
