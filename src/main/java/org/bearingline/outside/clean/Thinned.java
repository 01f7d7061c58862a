package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.PointThinning;

/** The chords of a course with needless points left out: what is left where no fit holds. */
final class Thinned {

  private Thinned() {}

  static List<Primitive> of(Course course, double tolerance) {
    List<Point> points = new ArrayList<>(course.size);
    for (int i = 0; i < course.size; i++) {
      points.add(course.at(i));
    }
    List<Point> kept;
    if (course.closed) {
      // Halved, so that no chord runs from a point to itself.
      int half = points.size() / 2;
      kept = new ArrayList<>(PointThinning.thin(points.subList(0, half + 1), tolerance));
      List<Point> rest = PointThinning.thin(points.subList(half, points.size()), tolerance);
      kept.addAll(rest.subList(1, rest.size()));
    } else {
      kept = PointThinning.thin(points, tolerance);
    }
    List<Primitive> lines = new ArrayList<>();
    for (int i = 0; i + 1 < kept.size(); i++) {
      if (!kept.get(i).equals(kept.get(i + 1))) {
        lines.add(new Line(kept.get(i), kept.get(i + 1)));
      }
    }
    return lines;
  }
}
