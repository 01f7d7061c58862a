package org.bearingline.drawing.labels;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Whether a line or arc comes into a box, exactly. */
final class Touching {

  private Touching() {}

  static boolean touches(Primitive piece, Bounds box) {
    return piece.match(line -> touches(line, box), arc -> touches(arc, box));
  }

  /** Cuts the line to the box's strip in x, then in y, and asks whether anything is left. */
  private static boolean touches(Line line, Bounds box) {
    double[] share = {0, 1};
    Point d = line.end().minus(line.start());
    return cut(share, line.start().x(), d.x(), box.minX(), box.maxX())
        && cut(share, line.start().y(), d.y(), box.minY(), box.maxY());
  }

  private static boolean cut(double[] share, double from, double along, double low, double high) {
    if (along == 0) {
      return from >= low && from <= high;
    }
    double a = (low - from) / along;
    double b = (high - from) / along;
    share[0] = Math.max(share[0], Math.min(a, b));
    share[1] = Math.min(share[1], Math.max(a, b));
    return share[0] <= share[1];
  }

  /** An arc comes into a box if it ends there or crosses one of its sides. */
  private static boolean touches(Arc arc, Bounds box) {
    return box.contains(arc.start())
        || box.contains(arc.end())
        || crosses(arc, box.minX(), box.minY(), box.maxY(), true)
        || crosses(arc, box.maxX(), box.minY(), box.maxY(), true)
        || crosses(arc, box.minY(), box.minX(), box.maxX(), false)
        || crosses(arc, box.maxY(), box.minX(), box.maxX(), false);
  }

  private static boolean crosses(Arc arc, double at, double low, double high, boolean upright) {
    double toSide = at - (upright ? arc.center().x() : arc.center().y());
    double square = arc.radius() * arc.radius() - toSide * toSide;
    if (square < 0) {
      return false;
    }
    double half = Math.sqrt(square);
    return meets(arc, toSide, half, low, high, upright)
        || meets(arc, toSide, -half, low, high, upright);
  }

  private static boolean meets(
      Arc arc, double toSide, double along, double low, double high, boolean upright) {
    double place = along + (upright ? arc.center().y() : arc.center().x());
    Point direction = upright ? new Point(toSide, along) : new Point(along, toSide);
    return place >= low && place <= high && arc.covers(direction.degrees());
  }
}
