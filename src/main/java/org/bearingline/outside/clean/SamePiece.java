package org.bearingline.outside.clean;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Other stretches of the line or circle that a piece lies on. */
final class SamePiece {

  /** mm that a point may lie beside a piece that it is on: what an {@code Arc} allows. */
  private static final double ON = 1e-6;

  private SamePiece() {}

  /**
   * Whether both points lie on the piece. Samples nearer to each other than what counts as one
   * point become one, which then lies beside an arc as small as they are near.
   */
  static boolean holds(Primitive piece, Point start, Point end) {
    return piece.distanceTo(start) <= ON && piece.distanceTo(end) <= ON;
  }

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
