package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;

/**
 * A curve of a drawing without units, as large as the maker says.
 *
 * @param curve as drawn
 * @param factor mm to one unit of the drawing
 */
record ScaledCurve(Curve curve, double factor) implements Curve {

  @Override
  public Point pointAt(double t) {
    return curve.pointAt(t).times(factor);
  }

  @Override
  public Point velocityAt(double t) {
    return curve.velocityAt(t).times(factor);
  }

  @Override
  public Point accelerationAt(double t) {
    return curve.accelerationAt(t).times(factor);
  }

  @Override
  public List<Double> breaks() {
    return curve.breaks();
  }

  @Override
  public int stretches() {
    return curve.stretches();
  }

  @Override
  public Point directionAfter(double t) {
    return curve.directionAfter(t);
  }

  @Override
  public Point directionBefore(double t) {
    return curve.directionBefore(t);
  }
}
