package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A smooth stretch of course whose straights and arcs stay exactly where they were drawn, while the
 * free curves between them give way: each is solved from the middle of the piece before it to the
 * middle of the piece after it, so that only where it meets them may slide along them. A drawing's
 * rounded figures let curves meet its straights at some thousandths of a degree, and no straight
 * should turn by that.
 */
final class Anchored {

  private final Course course;
  private final double tolerance;
  private final double sharp;
  private final List<Anchors.Anchor> anchors;
  private int windows;

  private Anchored(
      Course course, List<Anchors.Anchor> anchors, double tolerance, double sharpDegrees) {
    this.course = course;
    this.anchors = anchors;
    this.tolerance = tolerance;
    sharp = sharpDegrees;
  }

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
    List<Anchors.Anchor> anchors = Anchors.between(course, from, to, tolerance);
    if (anchors.isEmpty()) {
      return Optional.empty();
    }
    Anchored work = new Anchored(course, anchors, tolerance, sharpDegrees);
    return work.result(work.pieces(from, to));
  }

  /** The same once round a closed course that starts where {@link Anchors#seam} says. */
  static Optional<Pieces> ring(Course course, double tolerance, double sharpDegrees) {
    List<Anchors.Anchor> anchors = Anchors.between(course, 0, course.size - 1, tolerance);
    if (anchors.isEmpty() || anchors.get(0).from() != 0) {
      return Optional.empty();
    }
    Anchored work = new Anchored(course, anchors, tolerance, sharpDegrees);
    return work.result(work.round());
  }

  private Optional<Pieces> result(List<Primitive> pieces) {
    return pieces == null ? Optional.empty() : Optional.of(new Pieces(pieces, windows));
  }

  private List<Primitive> pieces(int from, int to) {
    List<Primitive> pieces = new ArrayList<>();
    Point start = course.at(from);
    Anchors.Anchor before = null;
    for (Anchors.Anchor after : anchors) {
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
      Anchors.Anchor before = anchors.get(i);
      boolean last = i + 1 == anchors.size();
      Anchors.Anchor after = anchors.get(last ? 0 : i + 1);
      int right = last ? course.size - 1 : after.from();
      if (before.to() == right && !before.runsOnAs(after)) {
        return null;
      }
      start = join(before, before.to(), after, right, start, pieces);
      if (start == null) {
        return null;
      }
    }
    pieces.set(0, SamePiece.between(anchors.get(0).piece(), start, pieces.get(0).end()));
    return pieces;
  }

  /**
   * Adds one anchor from where it starts, and what is free between it and the next one.
   *
   * @return where the next one starts; null where nothing fits
   */
  private Point join(
      Anchors.Anchor before,
      int left,
      Anchors.Anchor after,
      int right,
      Point start,
      List<Primitive> pieces) {
    Point end = course.at(right);
    if (left == right) {
      if (before != null) {
        pieces.add(SamePiece.between(before.piece(), start, end));
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
      pieces.add(SamePiece.between(before.piece(), start, window.get(0).end()));
    }
    pieces.addAll(window.subList(first, last));
    return after == null ? end : window.get(last).start();
  }

  // From the middle of the piece before to the middle of the one after; null where none fits.
  private List<Primitive> solved(Anchors.Anchor before, int left, int right, Anchors.Anchor after) {
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
                before == null ? null : before.middle(),
                after == null ? null : after.middle(),
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
}
