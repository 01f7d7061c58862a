package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** A rectangle about a centre with round corners, counter-clockwise. */
final class RoundedBox {

  /** Sides shorter than this, in mm, are taken up by the corners. */
  private static final double SHORTEST = 1e-6;

  private RoundedBox() {}

  /**
   * @param length along the tilt, mm
   * @param width across it, mm
   * @param radius of the corners, at most half the width and half the length
   * @param tilt degrees
   */
  static Loop of(Point centre, double length, double width, double radius, double tilt) {
    double a = length / 2;
    double b = width / 2;
    double r = Math.min(radius, Math.min(a, b));
    List<Primitive> pieces = new ArrayList<>();
    side(pieces, -a + r, -b, a - r, -b);
    corner(pieces, a - r, -b + r, r, -90);
    side(pieces, a, -b + r, a, b - r);
    corner(pieces, a - r, b - r, r, 0);
    side(pieces, a - r, b, -a + r, b);
    corner(pieces, -a + r, b - r, r, 90);
    side(pieces, -a, b - r, -a, -b + r);
    corner(pieces, -a + r, -b + r, r, 180);
    return new Loop(pieces)
        .transformed(
            Similarity.rotation(tilt, Point.ORIGIN)
                .then(Similarity.translation(centre.x(), centre.y())));
  }

  private static void side(List<Primitive> pieces, double x0, double y0, double x1, double y1) {
    Point from = new Point(x0, y0);
    Point to = new Point(x1, y1);
    if (from.distanceTo(to) > SHORTEST) {
      pieces.add(new Line(from, to));
    }
  }

  private static void corner(List<Primitive> pieces, double x, double y, double r, double from) {
    if (r > 0) {
      pieces.add(Arc.around(new Point(x, y), r, from, 90));
    }
  }
}
