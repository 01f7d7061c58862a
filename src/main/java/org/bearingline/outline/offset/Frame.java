package org.bearingline.outline.offset;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Region;

/**
 * Where the kernel counts from and how finely it tells points apart.
 *
 * @param originX mm; 0 unless the outline lies far from the origin, where doubles are coarse
 * @param originY mm
 * @param tolerance mm: the one tolerance of cutting, keeping and stitching, relative to the size
 */
record Frame(double originX, double originY, double tolerance) {

  /** Share of the size: some thousand roundings of a double, and a thousandth of the promise. */
  private static final double RELATIVE = 1e-12;

  /** How many sizes away from the origin the outline may lie before it is moved there. */
  private static final double FAR = 8;

  /** Shared edges agree less well than one outline with itself: a join may move an end by three. */
  private static final double SHARED = 8;

  static Frame of(Bounds box, double radius) {
    double size = Math.max(Math.max(box.width(), box.height()), radius);
    double x = box.center().x();
    double y = box.center().y();
    boolean far = Math.max(Math.abs(x), Math.abs(y)) > FAR * size;
    // Below the resolution of the coordinates themselves nothing can be told apart.
    double resolution = 16 * Math.ulp(Math.max(Math.abs(x), Math.abs(y)) + size);
    double tolerance = Math.max(RELATIVE * size, resolution);
    return far ? new Frame(x, y, tolerance) : new Frame(0, 0, tolerance);
  }

  static Frame of(Region region, double radius) {
    return of(region.bounds(), radius);
  }

  /** The frame for laying outlines over each other. */
  static Frame forOverlay(Bounds box) {
    Frame fine = of(box, 0);
    return new Frame(fine.originX, fine.originY, fine.tolerance * SHARED);
  }

  /** The same with ten times the tolerance. */
  Frame coarser() {
    return new Frame(originX, originY, tolerance * 10);
  }

  /** mm within which every result must hold: 1e-6, or ten tolerances of a large outline. */
  double promise() {
    return Math.max(1e-6, 10 * tolerance);
  }
}
