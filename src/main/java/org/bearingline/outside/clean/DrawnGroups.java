package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outline.fit.CurvePart;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Problem;

/**
 * A stretch of course as it was drawn, element by element, each joint a corner: lines and arcs
 * themselves, free curves by {@link CurveFit}, chords thinned. What is left where pieces that are
 * tangent all along would stray too far.
 */
final class DrawnGroups {

  private final Course course;
  private final double tolerance;
  private final List<Group> groups = new ArrayList<>();

  private DrawnGroups(Course course, double tolerance) {
    this.course = course;
    this.tolerance = tolerance;
  }

  /** The groups from one sample to another, each within the tolerance of the drawing. */
  static List<Group> between(Course course, int from, int to, double tolerance) {
    DrawnGroups work = new DrawnGroups(course, tolerance);
    int at = from;
    while (at < to) {
      int next = course.pieceEnd(at, to);
      work.add(at, next);
      at = next;
    }
    return work.groups;
  }

  private void add(int from, int to) {
    List<Primitive> pieces = pieces(from, to);
    if (pieces.isEmpty()) {
      pieces = Thinned.between(course, from, to, tolerance);
    }
    groups.add(new Group(from, to, pieces, false));
  }

  // Nothing for chords, and for a curve that no chain of arcs follows.
  private List<Primitive> pieces(int from, int to) {
    StrokePiece element = course.pieceAt(from);
    if (element instanceof StrokePiece.Free free) {
      double start = isJoint(from, from - 1) ? 0 : course.parameter[from];
      double end = isJoint(to - 1, to) ? 1 : course.parameter[to];
      return start < end ? fitted(new CurvePart(free.curve(), start, end)) : List.of();
    }
    boolean whole = isJoint(from, from - 1) && isJoint(to - 1, to);
    return whole && element instanceof StrokePiece.Plain plain
        ? List.of(plain.primitive())
        : List.of();
  }

  private List<Primitive> fitted(Curve curve) {
    try {
      return CurveFit.fit(curve, tolerance).primitives();
    } catch (Problem tooSharp) {
      return List.of();
    }
  }

  // Whether one element ends between two steps, the last of which may lie past the seam.
  private boolean isJoint(int step, int next) {
    int n = course.size - 1;
    if (!course.closed && (next < 0 || next >= n)) {
      return true;
    }
    int other = Math.floorMod(next, n);
    return course.element[step] != course.element[other] || course.elements.size() == 1;
  }
}
