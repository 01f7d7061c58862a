package org.bearingline.shape.step;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Brings the end of an outline onto its start to the last bit. */
final class Closing {

  private Closing() {}

  /** Moves the end of the last piece, which lies within {@link Pen#SHORTEST}, onto the start. */
  static void weld(List<Drawn> pieces) {
    Drawn last = pieces.get(pieces.size() - 1);
    Point start = pieces.get(0).primitive().start();
    Primitive piece = last.primitive();
    if (!piece.end().equals(start)) {
      pieces.set(
          pieces.size() - 1,
          last.with(
              piece.<Primitive>match(
                  line -> new Line(line.start(), start),
                  arc -> arc.isFullCircle() ? arc : moved(arc, start))));
    }
  }

  private static Primitive moved(Arc arc, Point end) {
    return arc.withEnds(arc.start(), end);
  }
}
