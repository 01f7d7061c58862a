package org.bearingline.routing;

import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Where one primitive of an edge ends and the next begins, wood on the left.
 *
 * @param at the corner
 * @param turn degrees the edge turns, to the left positive: left is an outside corner
 */
record EdgeCorner(Point at, double turn) {

  /**
   * A kink of fewer degrees than this is a smooth joint: no bit up to 100 mm leaves more than
   * 0.00001 mm in it, r (1/cos(turn/2) − 1).
   */
  static final double SMOOTH = 0.05;

  static EdgeCorner between(Primitive before, Primitive after) {
    Point in = before.tangentAt(1);
    Point out = after.tangentAt(0);
    return new EdgeCorner(before.end(), Math.toDegrees(Math.atan2(in.cross(out), in.dot(out))));
  }

  boolean isHollow() {
    return turn < -SMOOTH;
  }

  boolean isOutside() {
    return turn > SMOOTH;
  }
}
