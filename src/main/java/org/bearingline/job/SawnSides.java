package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Which edges of a drawn part the saw makes: straight ones on sides of the box round it. */
final class SawnSides {

  /** A line this near to a side, in mm, lies on it: what cleaning may have left. */
  private static final double ON_SIDE = 0.05;

  private SawnSides() {}

  /** The contour with every straight piece on a named side sawn and all else routed. */
  static Contour of(Loop outer, List<String> sides) {
    Bounds box = outer.bounds();
    List<EdgeKind> kinds = new ArrayList<>();
    outer.primitives().forEach(piece -> kinds.add(EdgeKind.ROUTED));
    for (String side : sides) {
      Predicate<Point> isOn = on(box, side);
      boolean found = false;
      for (int i = 0; i < outer.size(); i++) {
        Primitive piece = outer.primitives().get(i);
        if (piece instanceof Line && isOn.test(piece.start()) && isOn.test(piece.end())) {
          kinds.set(i, EdgeKind.SAWN);
          found = true;
        }
      }
      if (!found) {
        throw new Problem(
            Place.option("--sawn-edges"),
            "no straight edge of the drawing lies along its " + side + "; name another side");
      }
    }
    return new Contour(outer, kinds);
  }

  private static Predicate<Point> on(Bounds box, String side) {
    return switch (side) {
      case "left" -> p -> Math.abs(p.x() - box.minX()) <= ON_SIDE;
      case "right" -> p -> Math.abs(p.x() - box.maxX()) <= ON_SIDE;
      case "bottom" -> p -> Math.abs(p.y() - box.minY()) <= ON_SIDE;
      case "top" -> p -> Math.abs(p.y() - box.maxY()) <= ON_SIDE;
      default ->
          throw new Problem(
              Place.option("--sawn-edges"),
              "“" + side + "” is no side; write left, right, top or bottom");
    };
  }
}
