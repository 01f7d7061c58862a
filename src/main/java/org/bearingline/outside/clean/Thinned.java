package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.PointThinning;

/**
 * The steps of a course with needless points left out, arcs as drawn: what is left where no fit
 * holds.
 */
final class Thinned {

  private Thinned() {}

  /** The pieces from one sample to another. */
  static List<Primitive> between(Course course, int from, int to, double tolerance) {
    List<Primitive> pieces = new ArrayList<>();
    int at = from;
    while (at < to) {
      Primitive drawn = course.step[at] == Course.Step.ARC ? course.drawn[at] : null;
      int next = at + 1;
      while (next < to
          && drawn == (course.step[next] == Course.Step.ARC ? course.drawn[next] : null)) {
        next++;
      }
      if (drawn != null && SamePiece.holds(drawn, course.at(at), course.at(next))) {
        pieces.add(SamePiece.between(drawn, course.at(at), course.at(next)));
      } else {
        lines(course, at, next, tolerance, pieces);
      }
      at = next;
    }
    return pieces;
  }

  private static void lines(
      Course course, int from, int to, double tolerance, List<Primitive> pieces) {
    if (to - from > 1 && course.at(from).equals(course.at(to))) {
      // Of a loop smaller than the tolerance thinning would leave nothing.
      int far = farthest(course, from, to);
      lines(course, from, far, tolerance, pieces);
      lines(course, far, to, tolerance, pieces);
      return;
    }
    List<Point> points = new ArrayList<>(to - from + 1);
    for (int i = from; i <= to; i++) {
      points.add(course.at(i));
    }
    List<Point> kept = PointThinning.thin(points, tolerance);
    for (int i = 0; i + 1 < kept.size(); i++) {
      if (!kept.get(i).equals(kept.get(i + 1))) {
        pieces.add(new Line(kept.get(i), kept.get(i + 1)));
      }
    }
  }

  // The sample farthest from the first one of a loop.
  private static int farthest(Course course, int from, int to) {
    Point start = course.at(from);
    int far = from + 1;
    for (int i = from + 1; i < to; i++) {
      far = course.at(i).distanceTo(start) > course.at(far).distanceTo(start) ? i : far;
    }
    return far;
  }
}
