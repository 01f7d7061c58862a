package org.bearingline.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Where the loops of a drawn part begin. Drawings begin them anywhere; what is looked for along an
 * edge in steps would be found elsewhere in the same part of another program.
 */
final class LoopStart {

  /** Corners whose heights differ by less than this, in mm, are level. */
  private static final double LEVEL = 0.1;

  private LoopStart() {}

  /** The same outline, each loop beginning at its lowest corner, of level ones at the left one. */
  static Outline normal(Outline outline) {
    return new Outline(
        normal(outline.outer()), outline.openings().stream().map(LoopStart::normal).toList());
  }

  private static Loop normal(Loop loop) {
    List<Primitive> pieces = new ArrayList<>(loop.primitives());
    if (pieces.size() == 1 && pieces.get(0) instanceof Arc circle) {
      return Loop.of(Arc.around(circle.center(), circle.radius(), 0, circle.sweep()));
    }
    double lowest =
        pieces.stream().mapToDouble(piece -> piece.start().y()).min().orElseThrow() + LEVEL;
    Point first =
        pieces.stream()
            .map(Primitive::start)
            .filter(start -> start.y() <= lowest)
            .min(Comparator.comparingDouble(Point::x))
            .orElseThrow();
    int at = 0;
    while (!pieces.get(at).start().equals(first)) {
      at++;
    }
    Collections.rotate(pieces, -at);
    return new Loop(pieces);
  }
}
