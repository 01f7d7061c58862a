package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The upright line in which a drawing is mirrored.
 *
 * @param x mm from the left
 */
record MiddleLine(double x) {

  /** Tolerances that a line may stray to the other side and not count as over it. */
  private static final double WAVERS = 5;

  /** Places that a sentence names. */
  private static final int MOST_PLACES = 4;

  /** The map of each side on the other. */
  Similarity mirror() {
    return Similarity.mirror(new Point(x, 0), new Point(x, 1));
  }

  Carrier carrier() {
    return new Carrier(x, 0, 0, 1, 0);
  }

  /**
   * The two steps of a closed course over the line, without the to and fro where it wavers on it.
   *
   * @param drawn the same line as it was drawn, to name the places where there are more
   */
  List<Integer> crossings(Course mean, Course drawn, double tolerance, Sketch sketch) {
    List<Integer> crossings = crossings(mean, tolerance);
    // By the theorem of the fixed points of a turned circle: a loop that is its own image meets the
    // line in two places and no more.
    if (crossings.size() != 2) {
      List<Integer> own = crossings(drawn, tolerance);
      throw own.size() > 2 ? crooked(drawn, own, sketch) : crooked(mean, crossings, sketch);
    }
    return crossings;
  }

  private List<Integer> crossings(Course course, double tolerance) {
    int n = course.size - 1;
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (course.x[i] > x != course.x[i + 1] > x) {
        all.add(i);
      }
    }
    int i = 0;
    while (all.size() > 2 && i < all.size()) {
      int next = (i + 1) % all.size();
      if (stray(course, all.get(i), all.get(next)) <= WAVERS * tolerance) {
        all.remove(Math.max(i, next));
        all.remove(Math.min(i, next));
        i = 0;
      } else {
        i++;
      }
    }
    return all;
  }

  // How far the course goes from the line between two steps over it.
  private double stray(Course course, int from, int to) {
    double most = 0;
    int n = course.size - 1;
    for (int k = (from + 1) % n; k != (to + 1) % n; k = (k + 1) % n) {
      most = Math.max(most, Math.abs(course.x[k] - x));
    }
    return most;
  }

  /** Where a step goes over the line. */
  Point crossing(Course c, int step) {
    double share = (x - c.x[step]) / (c.x[step + 1] - c.x[step]);
    return new Point(x, c.y[step] + share * (c.y[step + 1] - c.y[step]));
  }

  private Problem crooked(Course course, List<Integer> crossings, Sketch sketch) {
    List<String> places = new ArrayList<>();
    for (int i : crossings.subList(0, Math.min(MOST_PLACES, crossings.size()))) {
      places.add(sketch.place(crossing(course, i)));
    }
    return new Problem(
        Place.file(sketch.file()),
        String.format(
            Locale.ROOT,
            "cannot be made symmetric: a loop goes over the middle line %d times (%s%s), and one"
                + " that is its own mirror image goes over it twice; correct the drawing there, or"
                + " leave the symmetry out",
            crossings.size(),
            String.join("; ", places),
            crossings.size() > MOST_PLACES ? "; …" : ""));
  }
}
