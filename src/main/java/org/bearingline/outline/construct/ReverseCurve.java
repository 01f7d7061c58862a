package org.bearingline.outline.construct;

import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * A reverse curve between two parallel tangents: an arc, an optional straight, and an arc turning
 * back by the same angle.
 *
 * @param firstRadius mm, more than 0
 * @param secondRadius mm, more than 0
 * @param straight length of the straight between the arcs in mm, 0 or more
 * @param turn degrees that each arc turns, more than 0, at most 90
 */
public record ReverseCurve(double firstRadius, double secondRadius, double straight, double turn) {

  public static ReverseCurve ofRadiiAndTurn(double r1, double r2, double turn) {
    throw new UnsupportedOperationException();
  }

  public static ReverseCurve ofRiseAndRadii(double rise, double r1, double r2) {
    throw new UnsupportedOperationException();
  }

  public static ReverseCurve ofRiseRadiiAndStraight(
      double rise, double r1, double r2, double straight) {
    throw new UnsupportedOperationException();
  }

  /** Equal radii. */
  public static ReverseCurve ofRiseAndRun(double rise, double run) {
    throw new UnsupportedOperationException();
  }

  /** The second radius follows. */
  public static ReverseCurve ofRiseRunAndFirstRadius(double rise, double run, double r1) {
    throw new UnsupportedOperationException();
  }

  /** The first radius follows. */
  public static ReverseCurve ofRiseRunAndSecondRadius(double rise, double run, double r2) {
    throw new UnsupportedOperationException();
  }

  /** The straight follows. */
  public static ReverseCurve ofRiseRunAndRadii(double rise, double run, double r1, double r2) {
    throw new UnsupportedOperationException();
  }

  /** Equal radii with a straight of the given length. */
  public static ReverseCurve ofRiseRunAndStraight(double rise, double run, double straight) {
    throw new UnsupportedOperationException();
  }

  /** The rise follows. */
  public static ReverseCurve ofRunAndRadii(double run, double r1, double r2) {
    throw new UnsupportedOperationException();
  }

  /** Equal radii that turn by the given degrees. */
  public static ReverseCurve ofRiseAndTurn(double rise, double turn) {
    throw new UnsupportedOperationException();
  }

  /** Distance in mm between the parallel tangents. */
  public double rise() {
    throw new UnsupportedOperationException();
  }

  /** Distance in mm between the tangent points, measured along the tangents. */
  public double run() {
    throw new UnsupportedOperationException();
  }

  /** The curve from {@code start} in direction {@code degrees}, rising to the given side. */
  public Path from(Point start, double degrees, Side side) {
    throw new UnsupportedOperationException();
  }
}
