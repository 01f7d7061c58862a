package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;

/**
 * How a part's routed edge lies on that of another.
 *
 * @param lay how the part lies
 * @param course its edge, so laid but not yet moved
 * @param turn the lay as a map, without a move
 * @param stretches curves that one position serves, in the order of travel
 * @param deviation mm by which curves differ at most
 */
record CurveMatch(
    Setting.Lay lay, Course course, Similarity turn, List<Stretch> stretches, double deviation) {

  /**
   * Neighbouring curves that fall on the template's together.
   *
   * @param first number of the first curve, from 0
   * @param last number of the last curve
   * @param move from the part, laid, to the template
   */
  record Stretch(int first, int last, Point move) {}

  /** The match in the plainest lay, the fewest positions first; empty where curves differ. */
  static Optional<CurveMatch> of(Course host, Contour part, double tolerance) {
    CurveMatch best = null;
    for (Setting.Lay lay : Setting.Lay.values()) {
      Similarity turn = lay.turn();
      Optional<Course> laid = Course.of(part.transformed(turn).counterClockwise());
      Optional<CurveMatch> match = laid.flatMap(c -> match(host, c, lay, turn, tolerance));
      if (match.isPresent()
          && (best == null || match.get().stretches().size() < best.stretches().size())) {
        best = match.get();
      }
    }
    return Optional.ofNullable(best);
  }

  /** The match of a part as it lies, without turning it. */
  static Optional<CurveMatch> in(Course host, Contour laid, double tolerance) {
    return Course.of(laid)
        .flatMap(c -> match(host, c, Setting.Lay.AS_DRAWN, Similarity.identity(), tolerance));
  }

  private static Optional<CurveMatch> match(
      Course host, Course course, Setting.Lay lay, Similarity turn, double tolerance) {
    if (host.size() != course.size() || host.sense() != course.sense()) {
      return Optional.empty();
    }
    List<Stretch> stretches = new ArrayList<>();
    double deviation = 0;
    for (int i = 0; i < host.size(); i++) {
      double apart = apart(host.curves().get(i), course.curves().get(i));
      if (apart > tolerance) {
        return Optional.empty();
      }
      deviation = Math.max(deviation, apart);
      Point move = host.start(i).minus(course.start(i));
      Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
      if (last != null && last.move().distanceTo(move) <= tolerance) {
        stretches.set(stretches.size() - 1, new Stretch(last.first(), i, last.move()));
      } else {
        stretches.add(new Stretch(i, i, move));
      }
    }
    if (!reaches(host, course, stretches)) {
      return Optional.empty();
    }
    return Optional.of(new CurveMatch(lay, course, turn, stretches, deviation));
  }

  /** How far two curves differ when they begin at the same point, mm. */
  static double apart(Path a, Path b) {
    Point move = a.start().minus(b.start());
    Path moved = b.transformed(Similarity.translation(move.x(), move.y()));
    double ends = a.end().distanceTo(moved.end());
    // Different ends already tell; the rest is only looked at where they agree.
    return ends > 1
        ? ends
        : Math.max(ends, PathDistance.between(a.primitives(), moved.primitives()));
  }

  /**
   * Whether the template's straights are long enough: half of the part's between two positions, and
   * at the ends where the template's edge cannot be run on.
   */
  private static boolean reaches(Course host, Course course, List<Stretch> stretches) {
    for (int i = 1; i < stretches.size(); i++) {
      int between = stretches.get(i).first();
      if (course.straights()[between] / 2 > host.straights()[between]) {
        return false;
      }
    }
    int end = host.size();
    return (host.straightStart() || course.straights()[0] <= host.straights()[0])
        && (host.straightEnd() || course.straights()[end] <= host.straights()[end]);
  }
}
