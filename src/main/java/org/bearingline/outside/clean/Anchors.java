package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;

/** Finds the lines and arcs of a course that hold what is beside them. */
final class Anchors {

  /** Tolerances of length from which a line or an arc holds. */
  private static final double LEAST = 50;

  /** Radians that the joint of two of them may turn. */
  private static final double SMOOTH = 2e-6;

  private final Course course;
  private final double tolerance;

  private Anchors(Course course, double tolerance) {
    this.course = course;
    this.tolerance = tolerance;
  }

  /**
   * A line or arc as drawn, over steps {@code from} to {@code to}.
   *
   * @param from its first sample
   * @param to its last sample
   * @param piece as drawn
   */
  record Anchor(int from, int to, Primitive piece) {

    /** Where a chain starts or ends that is held by it. */
    TangentChain.State middle() {
      Point middle = piece.middle();
      Point along = piece.tangentAt(0.5);
      return new TangentChain.State(middle.x(), middle.y(), Math.atan2(along.y(), along.x()));
    }

    /** Whether it runs on smoothly as another one that starts where it ends. */
    boolean runsOnAs(Anchor after) {
      return Joints.bend(piece.tangentAt(1), after.piece.tangentAt(0)) <= SMOOTH;
    }
  }

  /** In order; none where nothing between them is free, or where two of them meet in a bend. */
  static List<Anchor> between(Course course, int from, int to, double tolerance) {
    Anchors work = new Anchors(course, tolerance);
    List<Anchor> anchors = new ArrayList<>();
    boolean free = false;
    int next;
    for (int at = from; at < to; at = next) {
      next = work.end(at, to);
      Primitive piece = work.piece(at, next);
      if (piece == null || piece.length() < LEAST * tolerance) {
        free = true;
        continue;
      }
      Anchor anchor = new Anchor(at, next, piece);
      Anchor before = anchors.isEmpty() ? null : anchors.get(anchors.size() - 1);
      if (before != null && before.to() == at && !before.runsOnAs(anchor)) {
        return List.of();
      }
      anchors.add(anchor);
    }
    return free ? anchors : List.of();
  }

  /** The sample at which the longest line or arc of a closed course starts that may hold. */
  static OptionalInt seam(Course course, double tolerance) {
    Anchors work = new Anchors(course, tolerance);
    double longest = LEAST * tolerance;
    int found = -1;
    int last = course.size - 1;
    for (int at = 0; at < last; at = work.end(at, last)) {
      Primitive piece = work.piece(at, work.end(at, last));
      // An element on both sides of the present seam is whole only if it starts there.
      boolean cut = at == 0 && !work.isChord(0) && course.element[0] == course.element[last - 1];
      if (piece != null && piece.length() > longest && !cut) {
        longest = piece.length();
        found = at;
      }
    }
    return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
  }

  // One past the steps of what is drawn at a step: a chord, or the whole of another piece.
  private int end(int at, int to) {
    return isChord(at) ? at + 1 : course.pieceEnd(at, to);
  }

  private boolean isChord(int step) {
    return course.pieceAt(step) instanceof StrokePiece.Chords;
  }

  // Null where what is drawn over the steps is free to move.
  private Primitive piece(int from, int to) {
    Primitive drawn = course.drawn[from];
    if (drawn != null) {
      Point start = course.at(from);
      Point end = course.at(to);
      return SamePiece.holds(drawn, start, end) ? SamePiece.between(drawn, start, end) : null;
    }
    boolean plain = course.pieceAt(from) instanceof StrokePiece.Plain;
    boolean meant = plain || course.isMeantLine(from, tolerance);
    return course.isFlat(from) && meant && to == from + 1
        ? new Line(course.at(from), course.at(to))
        : null;
  }
}
