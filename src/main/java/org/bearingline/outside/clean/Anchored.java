package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;

/**
 * A smooth stretch of course whose straights and arcs stay exactly where they were drawn, while the
 * free curves between them give way: each is solved from the middle of the piece before it to the
 * middle of the piece after it, so that only where it meets them may slide along them. A drawing's
 * rounded figures let curves meet its straights at some thousandths of a degree, and no straight
 * should turn by that.
 */
final class Anchored {

  /** Tolerances of length from which a line or an arc holds what is beside it. */
  private static final double LEAST = 50;

  /** Radians that the joint of two drawn pieces may turn. */
  private static final double SMOOTH = 2e-6;

  private final Course course;
  private final double tolerance;
  private final double sharp;
  private final List<Anchor> anchors = new ArrayList<>();
  private int windows;

  private Anchored(Course course, double tolerance, double sharpDegrees) {
    this.course = course;
    this.tolerance = tolerance;
    sharp = sharpDegrees;
  }

  /**
   * A line or arc as drawn, over steps {@code from} to {@code to}.
   *
   * @param from its first sample
   * @param to its last sample
   * @param piece as drawn
   */
  private record Anchor(int from, int to, Primitive piece) {}

  /**
   * Pieces of which every drawn line and arc is exact.
   *
   * @param pieces in order, tangent to each other
   * @param windows how many free stretches were solved
   */
  record Pieces(List<Primitive> pieces, int windows) {

    /** Whether to take these: what is exact may cost one piece more for each curve. */
    boolean isWorth(int others) {
      return pieces.size() - windows <= others;
    }
  }

  /** Nothing where no line or arc holds, or where the curves between do not fit them. */
  static Optional<Pieces> between(
      Course course, int from, int to, double tolerance, double sharpDegrees) {
    Anchored work = new Anchored(course, tolerance, sharpDegrees);
    if (!work.collect(from, to)) {
      return Optional.empty();
    }
    return work.result(work.pieces(from, to));
  }

  /** The same once round a closed course that starts where {@link #seam} says. */
  static Optional<Pieces> ring(Course course, double tolerance, double sharpDegrees) {
    Anchored work = new Anchored(course, tolerance, sharpDegrees);
    if (!work.collect(0, course.size - 1) || work.anchors.get(0).from() != 0) {
      return Optional.empty();
    }
    return work.result(work.round());
  }

  /** The sample at which the longest line or arc of a closed course starts that may hold. */
  static OptionalInt seam(Course course, double tolerance) {
    Anchored work = new Anchored(course, tolerance, 0);
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

  private Optional<Pieces> result(List<Primitive> pieces) {
    return pieces == null ? Optional.empty() : Optional.of(new Pieces(pieces, windows));
  }

  // One past the steps of the element at a step.
  private int end(int at, int to) {
    return isChord(at) ? at + 1 : course.pieceEnd(at, to);
  }

  private boolean collect(int from, int to) {
    int at = from;
    boolean free = false;
    while (at < to) {
      int next = end(at, to);
      Primitive piece = piece(at, next);
      if (piece == null || piece.length() < LEAST * tolerance) {
        free = true;
      } else {
        boolean meets = !anchors.isEmpty() && last().to() == at;
        if (meets && turn(last().piece(), piece) > SMOOTH) {
          return false;
        }
        anchors.add(new Anchor(at, next, piece));
      }
      at = next;
    }
    return free && !anchors.isEmpty();
  }

  private Anchor last() {
    return anchors.get(anchors.size() - 1);
  }

  private static double turn(Primitive before, Primitive after) {
    Point in = before.tangentAt(1);
    Point out = after.tangentAt(0);
    return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
  }

  private boolean isChord(int step) {
    return course.pieceAt(step) instanceof StrokePiece.Chords;
  }

  // Null where what is drawn over the steps is free to move.
  private Primitive piece(int from, int to) {
    if (course.drawn[from] != null) {
      Arc arc = (Arc) course.drawn[from];
      return Arc.between(course.at(from), course.at(to), arc.center(), arc.sweep() > 0);
    }
    boolean plain = course.pieceAt(from) instanceof StrokePiece.Plain;
    boolean meant = plain || course.isMeantLine(from, tolerance);
    return course.isFlat(from) && meant && to == from + 1
        ? new Line(course.at(from), course.at(to))
        : null;
  }

  private List<Primitive> pieces(int from, int to) {
    List<Primitive> pieces = new ArrayList<>();
    Point start = course.at(from);
    Anchor before = null;
    for (Anchor after : anchors) {
      start = join(before, before == null ? from : before.to(), after, after.from(), start, pieces);
      if (start == null) {
        return null;
      }
      before = after;
    }
    return join(before, before.to(), null, to, start, pieces) == null ? null : pieces;
  }

  private List<Primitive> round() {
    List<Primitive> pieces = new ArrayList<>();
    Point start = course.at(0);
    for (int i = 0; i < anchors.size(); i++) {
      Anchor before = anchors.get(i);
      boolean last = i + 1 == anchors.size();
      Anchor after = anchors.get(last ? 0 : i + 1);
      int right = last ? course.size - 1 : after.from();
      if (before.to() == right && turn(before.piece(), after.piece()) > SMOOTH) {
        return null;
      }
      start = join(before, before.to(), after, right, start, pieces);
      if (start == null) {
        return null;
      }
    }
    pieces.set(0, cut(anchors.get(0).piece(), start, pieces.get(0).end()));
    return pieces;
  }

  /**
   * Adds one anchor from where it starts, and what is free between it and the next one.
   *
   * @return where the next one starts; null where nothing fits
   */
  private Point join(
      Anchor before, int left, Anchor after, int right, Point start, List<Primitive> pieces) {
    Point end = course.at(right);
    if (left == right) {
      if (before != null) {
        pieces.add(cut(before.piece(), start, end));
      }
      return end;
    }
    List<Primitive> window = solved(before, left, right, after);
    if (window == null) {
      return null;
    }
    windows++;
    int first = before == null ? 0 : 1;
    int last = after == null ? window.size() : window.size() - 1;
    if (before != null) {
      pieces.add(cut(before.piece(), start, window.get(0).end()));
    }
    pieces.addAll(window.subList(first, last));
    return after == null ? end : window.get(last).start();
  }

  private static Primitive cut(Primitive piece, Point start, Point end) {
    return piece instanceof Arc arc
        ? Arc.between(start, end, arc.center(), arc.sweep() > 0)
        : new Line(start, end);
  }

  // From the middle of the piece before to the middle of the one after; null where none fits.
  private List<Primitive> solved(Anchor before, int left, int right, Anchor after) {
    Course part = new Course();
    part.anchored = true;
    part.elements = course.elements;
    if (before != null) {
      Point middle = before.piece().middle();
      add(part, middle, left - 1, before.piece());
    }
    for (int i = left; i < right; i++) {
      add(part, course.at(i), i, course.drawn[i]);
    }
    add(part, course.at(right), Math.max(left, right - 1), null);
    if (after != null) {
      part.drawn[part.size - 1] = after.piece();
      part.step[part.size - 1] = step(after.piece());
      part.add(after.piece().middle().x(), after.piece().middle().y(), Course.Step.CHORD, null);
    }
    List<Group> groups =
        ChainFit.between(
            part,
            tolerance,
            sharp,
            new EndStates(
                before == null ? null : state(before.piece()),
                after == null ? null : state(after.piece()),
                false));
    int least = 1 + (before == null ? 0 : 1) + (after == null ? 0 : 1);
    return groups.size() == 1 && groups.get(0).pieces().size() >= least
        ? groups.get(0).pieces()
        : null;
  }

  private void add(Course part, Point p, int step, Primitive drawn) {
    part.add(p.x(), p.y(), drawn == null ? course.step[step] : step(drawn), drawn);
    part.bent[part.size - 1] = course.bent[step];
    part.element[part.size - 1] = course.element[step];
  }

  private static Course.Step step(Primitive drawn) {
    return drawn instanceof Arc ? Course.Step.ARC : Course.Step.CHORD;
  }

  private static TangentChain.State state(Primitive piece) {
    Point middle = piece.middle();
    Point along = piece.tangentAt(0.5);
    return new TangentChain.State(middle.x(), middle.y(), Math.atan2(along.y(), along.x()));
  }
}
