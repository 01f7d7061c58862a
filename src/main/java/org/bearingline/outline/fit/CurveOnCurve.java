package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Point;

/** A curve that answers as another one does, but for what it says itself. */
public interface CurveOnCurve extends Curve {

  /** The other one. */
  Curve curve();

  @Override
  default Point pointAt(double t) {
    return curve().pointAt(t);
  }

  @Override
  default Point velocityAt(double t) {
    return curve().velocityAt(t);
  }

  @Override
  default Point accelerationAt(double t) {
    return curve().accelerationAt(t);
  }

  @Override
  default List<Double> breaks() {
    return curve().breaks();
  }

  @Override
  default int stretches() {
    return curve().stretches();
  }

  @Override
  default Point directionAfter(double t) {
    return curve().directionAfter(t);
  }

  @Override
  default Point directionBefore(double t) {
    return curve().directionBefore(t);
  }
}
