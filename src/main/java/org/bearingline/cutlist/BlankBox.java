package org.bearingline.cutlist;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/**
 * The least box, its sides along x and y, that holds a part and, square to each routed stretch of
 * its edge, the allowance. A sawn edge gets none: it is brought to its line before any routing.
 * Where two routed stretches meet in an outside corner, the allowance goes round it.
 */
public final class BlankBox {

  private BlankBox() {}

  /**
   * The box in the part's own coordinates.
   *
   * @param contour counter-clockwise
   * @param allowance mm, 0 or more
   */
  public static Bounds of(Contour contour, double allowance) {
    Bounds box = contour.loop().bounds();
    if (allowance == 0) {
      return box;
    }
    List<Primitive> edge = contour.loop().primitives();
    for (int i = 0; i < edge.size(); i++) {
      if (contour.kinds().get(i) == EdgeKind.ROUTED) {
        box = box.union(edge.get(i).match(l -> moved(l, allowance), a -> moved(a, allowance)));
        int next = (i + 1) % edge.size();
        if (contour.kinds().get(next) == EdgeKind.ROUTED) {
          box = box.union(roundCorner(edge.get(i), edge.get(next), allowance));
        }
      }
    }
    return box;
  }

  private static Bounds moved(Line line, double allowance) {
    Point out = outward(line, 0).times(allowance);
    return Bounds.of(line.start().plus(out), line.end().plus(out));
  }

  private static Bounds moved(Arc arc, double allowance) {
    if (arc.isCounterClockwise()) {
      // The allowance's edge is the concentric arc.
      return Arc.around(arc.center(), arc.radius() + allowance, arc.startDegrees(), arc.sweep())
          .bounds();
    }
    // In a hollow the allowance's edge turns away from the box; only its ends can stand out.
    return Bounds.of(
        arc.start().plus(outward(arc, 0).times(allowance)),
        arc.end().plus(outward(arc, 1).times(allowance)));
  }

  /** Wood is on the left, so outward is the right of travel. */
  private static Point outward(Primitive piece, double share) {
    return piece.tangentAt(share).left().times(-1);
  }

  private static Bounds roundCorner(Primitive before, Primitive after, double allowance) {
    Point corner = before.end();
    Point from = outward(before, 1);
    double turn =
        Math.toDegrees(Math.atan2(from.cross(outward(after, 0)), from.dot(outward(after, 0))));
    if (turn <= 1e-9) {
      return Bounds.of(corner);
    }
    return Arc.around(corner, allowance, from.degrees(), turn).bounds();
  }
}
