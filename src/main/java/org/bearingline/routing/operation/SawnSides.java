package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.BoardSide;

/** The straight sawn edges of a part, the longest first. */
final class SawnSides {

  /** Sine of the angle under which two edges count as parallel. */
  private static final double PARALLEL = 0.05;

  private SawnSides() {}

  static List<Line> of(Part part) {
    Contour contour = part.contour();
    List<Line> sides = new ArrayList<>();
    for (int i = 0; i < contour.loop().size(); i++) {
      Primitive piece = contour.loop().primitives().get(i);
      if (contour.kinds().get(i) == EdgeKind.SAWN && piece instanceof Line line) {
        sides.add(line);
      }
    }
    sides.sort(Comparator.comparingDouble(Line::length).reversed());
    return sides;
  }

  /** Unit vector out of the wood. */
  static Point outward(Line side) {
    return side.tangentAt(0).left().times(-1);
  }

  static boolean areParallel(Line a, Line b) {
    return Math.abs(a.tangentAt(0).cross(b.tangentAt(0))) < PARALLEL;
  }

  /** The side of the part as a maker calls it. */
  static String word(Line side) {
    BoardSide nearest = BoardSide.BOTTOM;
    for (BoardSide each : BoardSide.values()) {
      if (each.outward().dot(outward(side)) > nearest.outward().dot(outward(side)) + 1e-9) {
        nearest = each;
      }
    }
    return nearest.word();
  }
}
