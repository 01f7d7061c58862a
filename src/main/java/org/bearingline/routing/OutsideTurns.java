package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A saw line whose outside arcs tighter than the blade turns are replaced by tangents, so that the
 * blade saws straight, leaves the wood, and comes in again. An arc of radius r that turns by α
 * becomes the corners of n equal tangents, each r (1/cos(α/2n) − 1) outside it; n is the least for
 * which that is no more than half the allowance and each turn no more than a right angle.
 *
 * @param path the line, never nearer to the part than before
 * @param corners where the blade leaves the wood
 */
record OutsideTurns(Path path, List<Point> corners) {

  private static final double MOST_OVER = 0.5;

  private static final double MOST_TURN = 90;

  /** Arcs this much tighter than the blade's turn, as a share, still count as sawable. */
  private static final double ROUNDING = 1e-9;

  /**
   * Squares up the tight outside arcs of a line.
   *
   * @param line part on the left
   * @param smallestRadius mm; 0 leaves the line as it is
   * @param allowance mm
   */
  static OutsideTurns squared(Path line, double smallestRadius, double allowance) {
    List<Point> corners = new ArrayList<>();
    List<Primitive> pieces = new ArrayList<>();
    for (Primitive piece : line.primitives()) {
      boolean tight =
          piece.curvature() > 0 && 1 / piece.curvature() < smallestRadius * (1 - ROUNDING);
      if (tight && piece instanceof Arc arc) {
        tangents(arc, allowance, pieces, corners);
      } else {
        pieces.add(piece);
      }
    }
    return new OutsideTurns(new Path(pieces), corners);
  }

  private static void tangents(
      Arc arc, double allowance, List<Primitive> pieces, List<Point> corners) {
    int n = (int) Math.ceil(arc.sweep() / MOST_TURN - ROUNDING);
    while (over(arc, n) > MOST_OVER * allowance) {
      n++;
    }
    Point from = arc.start();
    for (int i = 0; i < n; i++) {
      // The tangents at both ends of the i-th share meet outside its middle.
      Point middle = arc.pointAt((i + 0.5) / n);
      Point corner =
          arc.center()
              .plus(
                  middle
                      .minus(arc.center())
                      .times(1 / Math.cos(Math.toRadians(arc.sweep() / (2 * n)))));
      pieces.add(new Line(from, corner));
      corners.add(corner);
      from = corner;
    }
    pieces.add(new Line(from, arc.end()));
  }

  private static double over(Arc arc, int n) {
    return arc.radius() * (1 / Math.cos(Math.toRadians(arc.sweep() / (2 * n))) - 1);
  }
}
