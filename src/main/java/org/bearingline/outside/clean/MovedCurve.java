package org.bearingline.outside.clean;

import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.CurveOnCurve;

/**
 * A curve under a map that keeps shape.
 *
 * @param curve as drawn
 * @param map what is done to it
 */
record MovedCurve(Curve curve, Similarity map) implements CurveOnCurve {

  private Point turned(Point vector) {
    return map.apply(vector).minus(map.apply(Point.ORIGIN));
  }

  @Override
  public Point pointAt(double t) {
    return map.apply(curve.pointAt(t));
  }

  @Override
  public Point velocityAt(double t) {
    return turned(curve.velocityAt(t));
  }

  @Override
  public Point accelerationAt(double t) {
    return turned(curve.accelerationAt(t));
  }

  @Override
  public Point directionAfter(double t) {
    return turned(curve.directionAfter(t)).unit();
  }

  @Override
  public Point directionBefore(double t) {
    return turned(curve.directionBefore(t)).unit();
  }
}
