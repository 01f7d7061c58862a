package org.bearingline.outside.clean;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Other stretches of the line or circle that a piece lies on. */
final class SamePiece {

  private SamePiece() {}

  /**
   * From one point to another in the piece's own sense.
   *
   * @param start on the piece's line or circle, like {@code end}
   */
  static Primitive between(Primitive piece, Point start, Point end) {
    return piece instanceof Arc arc
        ? Arc.between(start, end, arc.center(), arc.sweep() > 0)
        : new Line(start, end);
  }
}
