package org.bearingline.outside.clean;

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
      double turn = Joints.bend(arriving, leaving);
      course.joint[course.size - 1] = turn;
      course.corner[course.size - 1] |= turn > sharp;
    }
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
    CurveSamples samples = new CurveSamples(curve, CLOSE * tolerance);
    List<Double> cuts = samples.cuts();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      double from = cuts.get(i);
      if (curve.breaks().contains(from)
          && Joints.bend(curve.directionBefore(from), curve.directionAfter(from)) > sharp) {
        course.corner[course.size - 1] = true;
      }
      for (CurveSamples.Sample sample : samples.between(from, cuts.get(i + 1))) {
        to(sample.at().x(), sample.at().y(), Course.Step.CURVE, null);
        course.parameter[course.size - 1] = sample.parameter();
      }
    }
    arriving = curve.directionBefore(1);
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
      // Chords tell no direction of their own.
      if (arriving != null && !(pieces.get(0) instanceof StrokePiece.Chords)) {
        course.joint[0] = Joints.bend(arriving, Welding.leaving(pieces.get(0)));
        course.corner[0] |= course.joint[0] > sharp;
      }
      course.corner[course.size - 1] = course.corner[0];
    }
    BentChords.mark(course, BENT);
    ChordCorners.mark(course, sharp, tolerance);
  }
}
