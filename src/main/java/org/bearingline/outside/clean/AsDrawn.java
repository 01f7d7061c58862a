package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.CurveChain;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Problem;

/**
 * The pieces of a stretch of course that needs no mending: its lines and arcs as drawn, its free
 * curves by {@link CurveFit}, all tangent where they meet because the drawing is.
 */
final class AsDrawn {

  /** Radians that a joint may turn and count as smooth: rounding of a drawing's figures. */
  private static final double SMOOTH = 2e-6;

  /** mm by which ends may miss each other. */
  private static final double MET = 1e-9;

  private final Course course;
  private final double tolerance;
  private final List<Primitive> pieces = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private boolean onlyPlain = true;

  private AsDrawn(Course course, double tolerance) {
    this.course = course;
    this.tolerance = tolerance;
  }

  /**
   * Pieces and whether there was no free curve among them, so that no others can be truer.
   *
   * @param pieces in order
   */
  record Pieces(List<Primitive> pieces, boolean onlyPlain) {}

  /** Nothing where the stretch holds chords in a row or joints that turn a little. */
  static Optional<Pieces> between(Course course, int from, int to, double tolerance) {
    AsDrawn work = new AsDrawn(course, tolerance);
    try {
      return work.collect(from, to)
          ? Optional.of(new Pieces(work.pieces, work.onlyPlain))
          : Optional.empty();
    } catch (Problem tooSharp) {
      return Optional.empty(); // A curve no chain of arcs follows; its samples may still be fitted.
    }
  }

  /** The same for a closed course without a corner; the pieces then join all round. */
  static Optional<Pieces> ring(Course course, double tolerance) {
    int n = course.size - 1;
    boolean oneElement = course.element[0] == course.element[n - 1];
    if (course.joint[0] > SMOOTH || oneElement && course.elements.size() > 1) {
      return Optional.empty();
    }
    return between(course, 0, n, tolerance).flatMap(AsDrawn::joinedRound);
  }

  private static Optional<Pieces> joinedRound(Pieces open) {
    List<Primitive> all = new ArrayList<>(open.pieces());
    int last = all.size() - 1;
    Point start = all.get(0).start();
    if (all.get(last).end().distanceTo(start) > MET) {
      return Optional.empty();
    }
    if (last > 0) {
      all.set(last, all.get(last).withEnds(all.get(last).start(), start));
      Optional<Primitive> one = one(all.get(last), all.get(0));
      if (one.isPresent()) {
        all.set(0, one.get());
        all.remove(last);
      }
    }
    return Optional.of(new Pieces(all, open.onlyPlain()));
  }

  private boolean collect(int from, int to) {
    if (from > 0 && course.element[from] == course.element[from - 1]
        || to < course.size - 1 && course.element[to] == course.element[to - 1]) {
      return false;
    }
    int at = from;
    while (at < to) {
      if (at > from && course.joint[at] > SMOOTH) {
        return false;
      }
      if (!add(course.pieceAt(at))) {
        return false;
      }
      at = course.pieceEnd(at, to);
    }
    flush();
    for (int i = 0; i + 1 < pieces.size(); i++) {
      double apart = pieces.get(i).end().distanceTo(pieces.get(i + 1).start());
      if (apart > MET) {
        return false;
      }
      if (apart > 0) {
        Primitive next = pieces.get(i + 1);
        pieces.set(i + 1, next.withEnds(pieces.get(i).end(), next.end()));
      }
    }
    return !pieces.isEmpty();
  }

  private boolean add(StrokePiece element) {
    if (element instanceof StrokePiece.Free free) {
      onlyPlain = false;
      curves.add(free.curve());
      return true;
    }
    flush();
    if (element instanceof StrokePiece.Plain plain) {
      append(plain.primitive());
      return true;
    }
    return false;
  }

  private void flush() {
    if (curves.isEmpty()) {
      return;
    }
    Curve whole = curves.size() == 1 ? curves.get(0) : CurveChain.smooth(curves);
    CurveFit.fit(whole, tolerance).primitives().forEach(this::append);
    curves.clear();
  }

  // Neighbours on one circle or one straight become one piece.
  private void append(Primitive piece) {
    int last = pieces.size() - 1;
    Optional<Primitive> one = last < 0 ? Optional.empty() : one(pieces.get(last), piece);
    if (one.isPresent()) {
      pieces.set(last, one.get());
    } else {
      pieces.add(piece);
    }
  }

  private static Optional<Primitive> one(Primitive before, Primitive piece) {
    if (before instanceof Arc a
        && piece instanceof Arc b
        && a.center().distanceTo(b.center()) < 1e-6
        && Math.abs(a.radius() - b.radius()) < 1e-6
        && a.sweep() * b.sweep() > 0
        && Math.abs(a.sweep() + b.sweep()) < 359.99) {
      return Optional.of(
          new Arc(a.center(), a.radius(), a.start(), b.end(), a.sweep() + b.sweep()));
    }
    if (before instanceof Line a
        && piece instanceof Line b
        && a.tangentAt(0).dot(b.tangentAt(0)) > 0
        && new Line(a.start(), b.end()).distanceTo(a.end()) < MET) {
      return Optional.of(new Line(a.start(), b.end()));
    }
    return Optional.empty();
  }
}
