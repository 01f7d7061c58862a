package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Point;

/** A curve of the plane with a parameter from 0 to 1, smooth between its breaks. */
public interface Curve {

  /** The point at parameter {@code t} in [0, 1], in mm. */
  Point pointAt(double t);

  /** First derivative by the parameter, in mm. */
  Point velocityAt(double t);

  /** Second derivative by the parameter, in mm. */
  Point accelerationAt(double t);

  /**
   * Parameters strictly between 0 and 1, rising, where the curve must be cut: corners, straights.
   */
  default List<Double> breaks() {
    return List.of();
  }
}
