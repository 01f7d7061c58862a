package org.bearingline.routing.operation;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.BoardSide;

/** The straight edge on one side of a part, where hinges sit. */
final class StraightSide {

  /** An edge within this of the part's outermost line lies on it, mm. */
  private static final double ON_SIDE = 0.01;

  private StraightSide() {}

  /** The straight edge on a side that covers a stretch of it; refused where there is none. */
  static Line covering(Part part, BoardSide side, double from, double to, Head head) {
    Bounds box = part.contour().loop().bounds();
    for (Primitive piece : part.contour().loop().primitives()) {
      if (piece instanceof Line line
          && isOn(line.start(), side, box)
          && isOn(line.end(), side, box)) {
        double a = along(line.start(), side);
        double b = along(line.end(), side);
        if (Math.min(a, b) <= from + ON_SIDE && Math.max(a, b) >= to - ON_SIDE) {
          return line;
        }
      }
    }
    throw new Problem(
        head.place(),
        head.name()
            + ": the part has no straight edge on its "
            + side.word()
            + " side from "
            + Sentences.mm(from)
            + " to "
            + Sentences.mm(to)
            + " along it; choose another side or place");
  }

  /** The point of a side at a coordinate along it. */
  static Point pointOn(Line rim, BoardSide side, double along) {
    return side.outward().x() == 0
        ? new Point(along, rim.start().y())
        : new Point(rim.start().x(), along);
  }

  private static double along(Point p, BoardSide side) {
    return side.outward().x() == 0 ? p.x() : p.y();
  }

  private static boolean isOn(Point p, BoardSide side, Bounds box) {
    return switch (side) {
      case LEFT -> Math.abs(p.x() - box.minX()) < ON_SIDE;
      case RIGHT -> Math.abs(p.x() - box.maxX()) < ON_SIDE;
      case TOP -> Math.abs(p.y() - box.maxY()) < ON_SIDE;
      case BOTTOM -> Math.abs(p.y() - box.minY()) < ON_SIDE;
    };
  }
}
