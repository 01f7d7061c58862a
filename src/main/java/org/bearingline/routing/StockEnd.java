package org.bearingline.routing;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;

/**
 * Where a routed edge meets a sawn edge and the stock ends.
 *
 * @param at the meeting
 * @param outward unit vector along the run-out, away from the work
 * @param alongSaw unit vector along the line of the sawn edge, away from the wood of the part
 * @param beyondSaw unit vector square to the sawn edge, out of the stock
 */
record StockEnd(Point at, Point outward, Point alongSaw, Point beyondSaw) {

  /** How far the box below goes back over the sawn edge, in mm: only to leave no seam. */
  private static final double OVERLAP = 1;

  /** Air: a box beyond the line of the sawn edge where there is no stock to cut. */
  Outline air(double size) {
    Point low = at.minus(alongSaw.times(OVERLAP));
    Point high = at.plus(alongSaw.times(size));
    Point out = beyondSaw.times(size);
    return Outline.of(
        Loop.polygon(List.of(low, high, high.plus(out), low.plus(out))).counterClockwise());
  }

  /** How far beyond the line of the sawn edge a point lies, in mm; negative inside the stock. */
  double beyond(Point p) {
    return p.minus(at).dot(beyondSaw);
  }
}
