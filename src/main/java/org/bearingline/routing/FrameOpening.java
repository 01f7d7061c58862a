package org.bearingline.routing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.bearingline.outline.Loop;
import org.bearingline.part.Part;

/**
 * The hole in a frame that its panel fills, seen from the show face: the left stile's inner edge
 * runs up from (0, 0), the right one's stands {@code width} to the right.
 *
 * @param width mm between the stiles
 * @param height mm at the left stile between the rails
 * @param top the top rail's edge, travelled to the right
 * @param bottom the bottom rail's edge, travelled to the left
 */
public record FrameOpening(double width, double height, FrameEdge top, FrameEdge bottom) {

  /**
   * The opening between two stiles and two rails.
   *
   * @param width mm between the stiles, more than 0
   * @param height mm at the left stile between the rails, more than 0
   * @param topRail a part whose routed edge is the curve, between its shoulder lines; it is turned
   *     so that its wood lies above; empty for a straight rail
   * @param bottomRail likewise, turned so that its wood lies below
   * @param units for the sentences
   * @throws org.bearingline.problem.Problem where a rail is not as long between its shoulders as
   *     the stiles stand apart, has no routed edge or several, or the rails' edges meet
   */
  public static FrameOpening of(
      double width, double height, Optional<Part> topRail, Optional<Part> bottomRail, Units units) {
    return FrameOpeningMaker.make(
        width, height, topRail, bottomRail, OptionalDouble.empty(), units);
  }

  /**
   * One of several openings side by side between the same rails, parted by muntins.
   *
   * @param width mm of this opening
   * @param height mm between the rails at their left shoulders, where the frame's stile stands
   * @param from mm along the rails from their left shoulders to this opening, 0 or more
   */
  public static FrameOpening part(
      double width,
      double height,
      Optional<Part> topRail,
      Optional<Part> bottomRail,
      double from,
      Units units) {
    return FrameOpeningMaker.make(
        width, height, topRail, bottomRail, OptionalDouble.of(from), units);
  }

  /** mm between the rails at the right side. */
  public double heightRight() {
    return top.inner().end().y() - bottom.inner().start().y();
  }

  /** Its boundary, counter-clockwise from the left stile's foot. */
  public Loop loop() {
    return FrameOpeningMaker.loop(this);
  }
}
