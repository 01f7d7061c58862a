package org.bearingline.shape.step;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Brings the end of an outline onto its start, and takes out the seam where both run on. */
final class Closing {

  /** Directions that differ by less, in radians, and centres nearer, as a share, are the same. */
  private static final double SAME = 1e-9;

  private Closing() {}

  /** Moves the end of the last piece, which lies within {@link Pen#SHORTEST}, onto the start. */
  static void weld(List<Drawn> pieces) {
    Drawn last = pieces.get(pieces.size() - 1);
    Point start = pieces.get(0).primitive().start();
    if (!last.primitive().end().equals(start)) {
      pieces.set(pieces.size() - 1, last.with(endingAt(last.primitive(), start)));
    }
  }

  private static Primitive endingAt(Primitive piece, Point end) {
    return piece.match(line -> new Line(line.start(), end), arc -> arc.withEnds(arc.start(), end));
  }

  /** Makes one piece of the last and the first where a start lies inside a line or an arc. */
  static void joinSeam(List<Drawn> pieces) {
    if (pieces.size() < 3) {
      return;
    }
    Drawn last = pieces.get(pieces.size() - 1);
    Drawn first = pieces.get(0);
    if (last.kind() == first.kind()) {
      joined(last.primitive(), first.primitive())
          .ifPresent(
              whole -> {
                pieces.set(0, first.with(whole));
                pieces.remove(pieces.size() - 1);
              });
    }
  }

  private static Optional<Primitive> joined(Primitive before, Primitive after) {
    if (before.tangentAt(1).minus(after.tangentAt(0)).norm() > SAME) {
      return Optional.empty();
    }
    return before.match(
        line ->
            after.match(
                next -> Optional.of(new Line(line.start(), next.end())), next -> Optional.empty()),
        arc -> after.match(next -> Optional.empty(), next -> joinedArcs(arc, next)));
  }

  private static Optional<Primitive> joinedArcs(Arc a, Arc b) {
    double slack = SAME * Math.max(1, a.radius());
    boolean sameCircle =
        a.center().distanceTo(b.center()) < slack && Math.abs(a.radius() - b.radius()) < slack;
    return sameCircle && Math.abs(a.sweep() + b.sweep()) < 360
        ? Optional.of(new Arc(a.center(), a.radius(), a.start(), b.end(), a.sweep() + b.sweep()))
        : Optional.empty();
  }
}
