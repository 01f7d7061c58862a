package org.bearingline.shape.figure;

import java.util.Optional;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.topology.Crossings;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;

/** Finds where edges cross or touch that should not. */
final class Meetings {

  /** Edges nearer than this, in mm, touch: far below what a saw or a template can keep apart. */
  private static final double TOUCH = 1e-6;

  /**
   * A place where two pieces meet.
   *
   * @param first number of the earlier piece
   * @param second number of the later piece
   */
  record Meeting(Point at, int first, int second) {}

  private Meetings() {}

  /** A place where a loop crosses or touches itself, other than where neighbours join. */
  static Optional<Meeting> within(Loop loop) {
    Pieces pieces = new Pieces(loop.size());
    loop.primitives().forEach(piece -> pieces.add(piece, 0, 0, 0));
    Crossings crossings = new Crossings(pieces, TOUCH);
    PieceIndex index = new PieceIndex(pieces);
    for (int i = 0; i < pieces.size(); i++) {
      int count = index.queryAround(i, TOUCH);
      int[] hits = index.hits().clone();
      for (int h = 0; h < count; h++) {
        int j = hits[h];
        if (j > i && crossings.cross(i, j) > 0) {
          return Optional.of(new Meeting(new Point(crossings.lastX(), crossings.lastY()), i, j));
        }
        if (j > i && starts(pieces, i).distanceTo(starts(pieces, j)) <= TOUCH) {
          return Optional.of(new Meeting(starts(pieces, i), i, j));
        }
      }
    }
    return Optional.empty();
  }

  /** A place where two loops cross or touch. */
  static Optional<Meeting> between(Loop a, Loop b) {
    Pieces pieces = new Pieces(a.size() + b.size());
    a.primitives().forEach(piece -> pieces.add(piece, 0, 0, 0));
    b.primitives().forEach(piece -> pieces.add(piece, 0, 0, 1));
    Crossings crossings = new Crossings(pieces, TOUCH);
    for (int i = 0; i < a.size(); i++) {
      for (int j = a.size(); j < pieces.size(); j++) {
        if (crossings.cross(i, j) > 0) {
          return Optional.of(
              new Meeting(new Point(crossings.lastX(), crossings.lastY()), i, j - a.size()));
        }
        if (starts(pieces, i).distanceTo(starts(pieces, j)) <= TOUCH) {
          return Optional.of(new Meeting(starts(pieces, i), i, j - a.size()));
        }
      }
    }
    return Optional.empty();
  }

  private static Point starts(Pieces pieces, int k) {
    return new Point(pieces.x0[k], pieces.y0[k]);
  }
}
