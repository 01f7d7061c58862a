package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.CurveFit;
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
      int next = at + 1;
      while (next < to && course.element[next] == course.element[at]) {
        next++;
      }
      work.add(at, next);
      at = next;
    }
    return work.groups;
  }

  private void add(int from, int to) {
    List<Primitive> pieces = isWhole(from, to) ? whole(from) : List.of();
    if (pieces.isEmpty()) {
      pieces = Thinned.between(course, from, to, tolerance);
    }
    groups.add(new Group(from, to, pieces, false));
  }

  // Nothing for chords, and for a curve that no chain of arcs follows.
  private List<Primitive> whole(int at) {
    StrokePiece element = course.elements.get(course.element[at]);
    if (element instanceof StrokePiece.Plain plain) {
      return List.of(plain.primitive());
    }
    if (element instanceof StrokePiece.Free free) {
      try {
        return CurveFit.fit(free.curve(), tolerance).primitives();
      } catch (Problem tooSharp) {
        return List.of();
      }
    }
    return List.of();
  }

  private boolean isWhole(int from, int to) {
    boolean starts = from == 0 || course.element[from - 1] != course.element[from];
    boolean ends = to == course.size - 1 || course.element[to] != course.element[to - 1];
    // Of a closed course that starts within an element, that element is on both sides of the seam.
    boolean cut =
        course.closed
            && course.elements.size() > 1
            && course.element[0] == course.element[course.size - 2]
            && (from == 0 || to == course.size - 1);
    return starts && ends && !cut;
  }
}
