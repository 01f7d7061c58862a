package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.SlotCutter;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;

/**
 * A rail's wood as the slot cutter meets it: its inner edge, run on level over the tenons and far
 * past them, and everything behind.
 */
final class FrameWood {

  private FrameWood() {}

  /**
   * The wood of the top or bottom rail.
   *
   * @param reach mm that it goes on past the opening on all sides, more than 0
   */
  static Region rail(FrameOpening opening, BoardSide side, double reach) {
    boolean top = side == BoardSide.TOP;
    Path edge = top ? opening.top().whole() : opening.bottom().whole();
    Bounds box = edge.bounds();
    double left = Math.min(0, box.minX()) - reach;
    double right = Math.max(opening.width(), box.maxX()) + reach;
    double far = top ? box.maxY() + reach : box.minY() - reach;
    List<Primitive> pieces = new ArrayList<>();
    Point start = new Point(top ? left : right, edge.start().y());
    Point end = new Point(top ? right : left, edge.end().y());
    pieces.add(new Line(start, edge.start()));
    pieces.addAll(edge.primitives());
    pieces.add(new Line(edge.end(), end));
    Point farEnd = new Point(end.x(), far);
    Point farStart = new Point(start.x(), far);
    pieces.add(new Line(end, farEnd));
    pieces.add(new Line(farEnd, farStart));
    pieces.add(new Line(farStart, start));
    return Region.of(Outline.of(new Loop(pieces)));
  }

  /**
   * ((W ⊕ D(R)) ⊖ D(r − gap)): what lies farther into a rail's wood than {@code gap} mm before its
   * groove's floor.
   *
   * @param gap mm, less than the depth of the groove; 0 for the floor itself
   */
  static Region beyond(Region wood, SlotCutter slot, double gap) {
    Region centres = Morphology.dilate(wood, slot.bearing().radius()).region();
    return Morphology.erode(centres, slot.cutter().radius() - gap).region();
  }
}
