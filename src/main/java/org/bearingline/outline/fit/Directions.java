package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/** Directions of travel, also where a curve stands still for a moment. */
final class Directions {

  /** Share of the acceleration below which the velocity is rounding. */
  private static final double STANDING = 1e-9;

  /** Step in the parameter where both derivatives vanish. */
  private static final double STEP = 1e-4;

  private Directions() {}

  /** The limit of the direction at {@code t}, from after (side 1) or from before (side −1). */
  static Point limit(Curve curve, double t, int side) {
    Point velocity = curve.velocityAt(t);
    Point acceleration = curve.accelerationAt(t);
    if (velocity.norm() > STANDING * acceleration.norm()) {
      return velocity.unit();
    }
    // v(t + h) ≈ h a, and h has the sign of the side.
    Point near = curve.pointAt(t + side * STEP);
    Point chord = near.minus(curve.pointAt(t)).times(side);
    if (acceleration.norm() > 1e-6 * chord.norm() / STEP) {
      return acceleration.times(side).unit();
    }
    return chord.unit();
  }
}
