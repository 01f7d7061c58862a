package org.bearingline.outline.offset;

/** A result that failed one of its checks, with the place; it sends the work to the next way. */
final class Unproven extends Exception {

  private static final long serialVersionUID = 1L;

  private final double x;
  private final double y;

  Unproven(String what, double x, double y, Frame frame) {
    super(what, null, false, false);
    this.x = x + frame.originX();
    this.y = y + frame.originY();
  }

  /** mm, in the outline's own coordinates. */
  double x() {
    return x;
  }

  double y() {
    return y;
  }
}
