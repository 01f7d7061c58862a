package org.bearingline.export.pdf;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;

/**
 * Arcs as cubic Bézier curves. A curve over the angle θ with both handles 4/3 · tan(θ/4) radii long
 * meets the circle at its ends and its middle and lies outside it between, by at most 2.73e-4 radii
 * for 90°; the error falls with the sixth power of the angle.
 */
final class Curves {

  /** The largest distance from the true circle, mm. */
  static final double TOLERANCE = 5e-4;

  private static final double ERROR_OF_A_QUARTER = 2.8e-4;

  private Curves() {}

  /** Into how many equal curves the arc is cut. */
  static int count(Arc arc) {
    double quarters = Math.abs(arc.sweep()) / 90;
    double finer = Math.pow(ERROR_OF_A_QUARTER * arc.radius() / TOLERANCE, 1.0 / 6);
    return Math.max(1, (int) Math.ceil(quarters * Math.max(1, finer) - 1e-9));
  }

  /** End of the first handle, end of the second handle and end of curve {@code i} of {@code n}. */
  static Point[] curve(Arc arc, int i, int n) {
    double from = (double) i / n;
    double to = (double) (i + 1) / n;
    double handle =
        4.0 / 3 * Math.tan(Math.toRadians(Math.abs(arc.sweep())) / n / 4) * arc.radius();
    Point start = arc.pointAt(from);
    Point end = arc.pointAt(to);
    return new Point[] {
      start.plus(arc.tangentAt(from).times(handle)), end.minus(arc.tangentAt(to).times(handle)), end
    };
  }
}
