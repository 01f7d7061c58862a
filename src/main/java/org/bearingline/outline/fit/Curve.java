package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Point;

/**
 * A curve of the plane with a parameter from 0 to 1, smooth between its breaks. Where the velocity
 * vanishes the direction is taken from the limit on the asked side.
 */
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

  /** How many simple stretches the curve is made of: how closely it must be looked at. */
  default int stretches() {
    return 1;
  }

  /** Unit vector of travel just after {@code t}, 0 ≤ t &lt; 1. */
  default Point directionAfter(double t) {
    return Directions.limit(this, t, 1);
  }

  /** Unit vector of travel just before {@code t}, 0 &lt; t ≤ 1. */
  default Point directionBefore(double t) {
    return Directions.limit(this, t, -1);
  }

  /** Signed curvature in 1/mm, positive to the left; not finite where the curve stands still. */
  default double curvatureAt(double t) {
    Point velocity = velocityAt(t);
    double speed = velocity.norm();
    return velocity.cross(accelerationAt(t)) / (speed * speed * speed);
  }
}
