package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/**
 * A stretch of a curve.
 *
 * @param curve the whole
 * @param from parameter at which the stretch starts
 * @param to parameter at which it ends, more than {@code from}
 */
record Span(Curve curve, double from, double to) {

  Point start() {
    return curve.pointAt(from);
  }

  Point end() {
    return curve.pointAt(to);
  }

  Point startDirection() {
    return curve.directionAfter(from);
  }

  Point endDirection() {
    return curve.directionBefore(to);
  }

  double middle() {
    return (from + to) / 2;
  }

  /** The point at share {@code s} of the parameter's stretch. */
  Point at(double s) {
    return curve.pointAt(from + s * (to - from));
  }

  Span firstHalf() {
    return new Span(curve, from, middle());
  }

  /** How many samples show the shape: a fixed number to each simple stretch in reach. */
  int samples(int perStretch) {
    return (int) Math.ceil(Math.max(1, curve.stretches() * (to - from)) * perStretch);
  }
}
