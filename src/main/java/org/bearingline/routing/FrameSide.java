package org.bearingline.routing;

import java.util.EnumMap;
import java.util.Map;
import org.bearingline.kit.SlotCutter;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;

/**
 * One of the four grooved members round a panel.
 *
 * @param side of the opening
 * @param inner its edge between its neighbours, wood on the left
 * @param shaped whether that edge is a curve
 * @param wood of the member, run on past its neighbours
 * @param slot what grooves it
 */
record FrameSide(BoardSide side, Path inner, boolean shaped, Region wood, SlotCutter slot) {

  /** All four, in the order of {@link BoardSide}. */
  static Map<BoardSide, FrameSide> around(FrameOpening opening, SlotCutter slot) {
    double reach = 2 * slot.cutter().diameter();
    Region top = FrameWood.rail(opening, BoardSide.TOP, reach);
    Region bottom = FrameWood.rail(opening, BoardSide.BOTTOM, reach);
    double low = bottom.bounds().minY();
    double high = top.bounds().maxY();
    double right = opening.width();
    Point topRight = opening.top().inner().end();
    Point bottomRight = opening.bottom().inner().start();
    Map<BoardSide, FrameSide> sides = new EnumMap<>(BoardSide.class);
    sides.put(
        BoardSide.LEFT,
        new FrameSide(
            BoardSide.LEFT,
            Path.of(new Line(Point.ORIGIN, new Point(0, opening.height()))),
            false,
            box(-reach, low, 0, high),
            slot));
    sides.put(
        BoardSide.RIGHT,
        new FrameSide(
            BoardSide.RIGHT,
            Path.of(new Line(topRight, bottomRight)),
            false,
            box(right, low, right + reach, high),
            slot));
    sides.put(
        BoardSide.TOP,
        new FrameSide(BoardSide.TOP, opening.top().inner(), opening.top().shaped(), top, slot));
    sides.put(
        BoardSide.BOTTOM,
        new FrameSide(
            BoardSide.BOTTOM, opening.bottom().inner(), opening.bottom().shaped(), bottom, slot));
    return sides;
  }

  private static Region box(double left, double low, double right, double high) {
    return Region.of(Outline.of(Loop.rectangle(new Bounds(left, low, right, high))));
  }

  /**
   * What lies farther into the wood than {@code gap} mm before the groove's floor.
   *
   * @param gap mm, less than the depth of the groove; 0 for the floor itself
   */
  Region beyond(double gap) {
    return FrameWood.beyond(wood, slot, gap);
  }

  /** How deep a point lies in a region, mm; negative outside. */
  static double depthIn(Region region, Point p) {
    double distance = region.distanceTo(p);
    return region.contains(p) ? distance : -distance;
  }
}
