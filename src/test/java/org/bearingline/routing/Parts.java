package org.bearingline.routing;

import org.bearingline.part.Contour;
import org.bearingline.part.Part;

/** Parts for tests, with their measures in mm. */
final class Parts {

  private Parts() {}

  /**
   * A rail 600 × 90 whose lower edge steps up by {@code radius} on both sides: two arcs of 60° and
   * equal radius each, so the rise is 2 r (1 − cos 60°) = r. The other three edges are sawn.
   */
  static Part liftRail(double radius) {
    double run = 2 * radius * Math.sin(Math.toRadians(60));
    return Walk.from(0, 0, 0)
        .ahead(100)
        .arc(radius, 60)
        .arc(radius, -60)
        .ahead(400 - 2 * run)
        .arc(radius, -60)
        .arc(radius, 60)
        .ahead(100)
        .sawn()
        .to(600, 90)
        .to(0, 90)
        .part("rail");
  }

  /** A loop of a rectangle about (0, 0) with round corners, routed all round. */
  static Contour roundedRectangle(double width, double height, double radius) {
    return Walk.from(-width / 2 + radius, -height / 2, 0)
        .ahead(width - 2 * radius)
        .arc(radius, 90)
        .ahead(height - 2 * radius)
        .arc(radius, 90)
        .ahead(width - 2 * radius)
        .arc(radius, 90)
        .ahead(height - 2 * radius)
        .arc(radius, 90)
        .close();
  }

  /** A sharp rectangle about (0, 0), routed all round. */
  static Contour rectangle(double width, double height) {
    return Walk.from(-width / 2, -height / 2, 0)
        .ahead(width)
        .turn(90)
        .ahead(height)
        .turn(90)
        .ahead(width)
        .close();
  }

  /** A sawn board about (0, 0). */
  static Contour board(double width, double height) {
    return Contour.sawn(rectangle(width, height).loop());
  }

  /** A board 300 × 200 with one through opening. */
  static Part boardWith(Contour opening) {
    return Walk.part("board", board(300, 200), Walk.through("opening", opening));
  }

  /**
   * A board 400 wide whose routed upper edge has one sharp notch of the given angle, straight down
   * at its middle.
   */
  static Part notched(double angle) {
    double half = 60 * Math.tan(Math.toRadians(angle / 2));
    return Walk.from(-400, 200, -90)
        .sawn()
        .to(-400, 0)
        .to(400, 0)
        .to(400, 200)
        .routed()
        .to(half, 200)
        .to(0, 140)
        .to(-half, 200)
        .to(-400, 200)
        .part("notched");
  }
}
