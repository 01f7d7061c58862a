package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outside.StrokePiece;

/** Samples a chain of stroke pieces so closely that the samples stand for it. */
final class CourseBuilder {

  /** Share of the tolerance by which a curve may leave the chords of its samples. */
  private static final double CLOSE = 0.02;

  private static final int LEAST_HALVINGS = 3;
  private static final int MOST_HALVINGS = 16;

  /** Degrees of an arc to one sample. */
  private static final double ARC_STEP = 4;

  /** Radians that a corner of a curve cut into chords turns at most: 29 chords to a circle. */
  private static final double BENT = Math.toRadians(12.5);

  private final double tolerance;
  private final double sharp;
  private final double same;
  private final Course course = new Course();
  private int doubled;
  private double toldMove;
  private Point toldMoveAt = Point.ORIGIN;
  private Point arriving;

  private CourseBuilder(double tolerance, double sharpDegrees) {
    this.tolerance = tolerance;
    sharp = Math.toRadians(sharpDegrees);
    // Points nearer than this are one: far below the tolerance, far above rounding.
    same = tolerance * 1e-3;
  }

  /**
   * A course and what was dropped on the way.
   *
   * @param doubledPoints points that fell on the one before
   * @param toldMove mm by which a free curve leaves the arc it was meant to be, at most
   * @param toldMoveAt where that is
   */
  record Built(Course course, int doubledPoints, double toldMove, Point toldMoveAt) {}

  static Built of(List<StrokePiece> pieces, boolean closed, double tolerance, double sharpDegrees) {
    CourseBuilder builder = new CourseBuilder(tolerance, sharpDegrees);
    Point first = pieces.get(0).start();
    builder.course.add(first.x(), first.y(), Course.Step.CHORD, null);
    List<StrokePiece> told = builder.told(pieces);
    for (StrokePiece piece : told) {
      builder.add(piece);
    }
    builder.finish(told, closed);
    return new Built(builder.course, builder.doubled, builder.toldMove, builder.toldMoveAt);
  }

  // Free curves that were meant to be arcs or straights are told as such.
  private List<StrokePiece> told(List<StrokePiece> pieces) {
    MeantPieces meant = MeantPieces.of(pieces, tolerance);
    toldMove = meant.move();
    toldMoveAt = meant.at();
    return meant.pieces();
  }

  private void add(StrokePiece piece) {
    Point start = piece.start();
    int last = course.size - 1;
    if (start.distanceTo(course.at(last)) > same) {
      gap(start);
    }
    course.elements.add(piece);
    if (piece instanceof StrokePiece.Chords chords) {
      int before = course.size;
      for (Point p : chords.points()) {
        to(p.x(), p.y(), Course.Step.CHORD, null);
      }
      // The first point is where the course already stands.
      doubled += chords.points().size() - 1 - (course.size - before);
      arriving = null;
    } else if (piece instanceof StrokePiece.Free free) {
      add(free.curve());
    } else if (((StrokePiece.Plain) piece).primitive() instanceof Arc arc) {
      add(arc);
    } else {
      Line line = (Line) ((StrokePiece.Plain) piece).primitive();
      meet(line.tangentAt(0));
      to(line.start().x(), line.start().y(), Course.Step.CHORD, null);
      to(line.end().x(), line.end().y(), Course.Step.CHORD, null);
      arriving = line.tangentAt(1);
    }
  }

  // A straight to where the next piece starts or the first one did.
  private void gap(Point to) {
    Line straight = new Line(course.at(course.size - 1), to);
    course.elements.add(new StrokePiece.Plain(straight));
    meet(straight.tangentAt(0));
    to(to.x(), to.y(), Course.Step.CHORD, null);
    arriving = straight.tangentAt(1);
  }

  // Marks a corner where two pieces with known directions meet sharply.
  private void meet(Point leaving) {
    if (arriving != null) {
      double turn = turn(arriving, leaving);
      course.joint[course.size - 1] = turn;
      course.corner[course.size - 1] |= turn > sharp;
    }
  }

  private static double turn(Point in, Point out) {
    return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
  }

  private void to(double px, double py, Course.Step kind, Arc arc) {
    int last = course.size - 1;
    double apart = Math.hypot(px - course.x[last], py - course.y[last]);
    if (apart <= same) {
      return;
    }
    course.step[last] = kind;
    course.element[last] = course.elements.size() - 1;
    course.drawn[last] = arc;
    course.add(px, py, Course.Step.CHORD, null);
  }

  private void add(Arc arc) {
    meet(arc.tangentAt(0));
    to(arc.start().x(), arc.start().y(), Course.Step.CHORD, null);
    int n = Math.max(8, (int) Math.ceil(Math.abs(arc.sweep()) / ARC_STEP));
    for (int i = 1; i <= n; i++) {
      Point p = arc.pointAt((double) i / n);
      to(p.x(), p.y(), Course.Step.ARC, arc);
    }
    arriving = arc.tangentAt(1);
  }

  private void add(Curve curve) {
    Point start = curve.pointAt(0);
    if (arriving != null) {
      meet(curve.directionAfter(0));
    }
    to(start.x(), start.y(), Course.Step.CHORD, null);
    List<Double> cuts = new ArrayList<>();
    int stretches = Math.max(1, curve.stretches());
    for (int i = 0; i <= stretches; i++) {
      cuts.add((double) i / stretches);
    }
    cuts.addAll(curve.breaks());
    List<Double> sorted = cuts.stream().distinct().sorted().toList();
    for (int i = 0; i + 1 < sorted.size(); i++) {
      double from = sorted.get(i);
      double to = sorted.get(i + 1);
      if (curve.breaks().contains(from)
          && turn(curve.directionBefore(from), curve.directionAfter(from)) > sharp) {
        course.corner[course.size - 1] = true;
      }
      halve(curve, from, curve.pointAt(from), to, curve.pointAt(to), 0);
      Point end = curve.pointAt(to);
      to(end.x(), end.y(), Course.Step.CURVE, null);
      course.parameter[course.size - 1] = to;
    }
    arriving = curve.directionBefore(1);
  }

  private void halve(Curve curve, double from, Point a, double to, Point b, int depth) {
    if (depth >= MOST_HALVINGS) {
      return;
    }
    double half = (from + to) / 2;
    Point middle = curve.pointAt(half);
    if (depth >= LEAST_HALVINGS
        && off(a, b, middle) <= CLOSE * tolerance
        && off(a, b, curve.pointAt((3 * from + to) / 4)) <= CLOSE * tolerance) {
      return;
    }
    halve(curve, from, a, half, middle, depth + 1);
    to(middle.x(), middle.y(), Course.Step.CURVE, null);
    course.parameter[course.size - 1] = half;
    halve(curve, half, middle, to, b, depth + 1);
  }

  private static double off(Point a, Point b, Point p) {
    return a.equals(b) ? a.distanceTo(p) : new Line(a, b).distanceTo(p);
  }

  private void finish(List<StrokePiece> pieces, boolean closed) {
    int last = course.size - 1;
    course.closed = closed;
    if (closed) {
      double apart = course.at(0).distanceTo(course.at(last));
      if (apart <= same) {
        course.x[last] = course.x[0];
        course.y[last] = course.y[0];
      } else {
        gap(course.at(0));
      }
      Point leaving = leaving(pieces.get(0));
      if (arriving != null && leaving != null) {
        course.joint[0] = turn(arriving, leaving);
        course.corner[0] |= course.joint[0] > sharp;
      }
      course.corner[course.size - 1] = course.corner[0];
    }
    BentChords.mark(course, BENT);
    markVertices();
  }

  private static Point leaving(StrokePiece piece) {
    if (piece instanceof StrokePiece.Free free) {
      return free.curve().directionAfter(0);
    }
    return piece instanceof StrokePiece.Plain plain ? plain.primitive().tangentAt(0) : null;
  }

  // A vertex between chords is a corner where no smooth line could pass it within the tolerance.
  private void markVertices() {
    int n = course.size;
    for (int i = course.closed ? 0 : 1; i < n - 1; i++) {
      int before = course.before(i);
      if (course.step[before] == Course.Step.CURVE && course.step[i] == Course.Step.CURVE) {
        continue;
      }
      if (course.bent[before] && course.bent[i]) {
        course.corner[i] = false;
        continue;
      }
      double turn = Math.abs(course.turn(before, i, course.after(i)));
      double shorter = Math.min(course.length(before), course.length(i));
      if (turn > sharp && shorter / 2 * Math.tan(turn / 4) > tolerance) {
        course.corner[i] = true;
      }
    }
    if (course.closed) {
      course.corner[n - 1] = course.corner[0];
    }
  }
}
