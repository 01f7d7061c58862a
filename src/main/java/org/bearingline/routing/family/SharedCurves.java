package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.routing.RoutingResult;

/**
 * Finds curves that stand in parts of different courses, such as one lift in a rail with one step a
 * side and in an apron with two.
 */
public final class SharedCurves {

  private SharedCurves() {}

  /** A straight between two curves shorter than this, in mm, is too short to stop on. */
  private static final double SHORTEST_STOP = 10;

  /** A curve of one part. */
  private record Spot(int part, int curve) {}

  /**
   * A place with the straights there are beside the curve in the order of travel, mm; infinite at
   * the part's ends, which the router may leave.
   */
  record PlaceOfCurve(SharedCurve.Use use, double before, double after) {
    boolean hasRoomToStop() {
      return before >= SHORTEST_STOP && after >= SHORTEST_STOP;
    }
  }

  /**
   * Curves that stand in two parts or more which are no family of their own, in the order of the
   * first part they stand in.
   *
   * @param parts in the job's order
   * @param families of the same parts, found before
   * @param units for the sentences
   */
  public static List<SharedCurve> of(
      List<RoutingResult> parts, List<Family> families, Units units) {
    List<SharedCurve> found = new ArrayList<>();
    Set<Spot> taken = new HashSet<>();
    for (int host = 0; host < parts.size(); host++) {
      Optional<Course> course = Families.course(parts.get(host));
      if (course.isEmpty() || Families.template(parts.get(host)).isEmpty()) {
        continue;
      }
      for (int curve = 0; curve < course.get().size(); curve++) {
        if (!taken.contains(new Spot(host, curve))) {
          List<PlaceOfCurve> uses =
              uses(parts, host, course.get(), course.get().curves().get(curve), taken);
          if (isNews(uses, families)) {
            found.add(new ShortTemplate(parts.get(host), course.get(), curve, units).serving(uses));
          }
        }
      }
    }
    return found;
  }

  /** Whether every curve of a part's edge is one of these. */
  public static boolean makeAll(RoutingResult part, List<SharedCurve> curves) {
    long places =
        curves.stream()
            .flatMap(curve -> curve.uses().stream())
            .filter(use -> use.part().equals(part.part().name()))
            .count();
    return places > 0
        && Families.course(part).filter(course -> course.size() == places).isPresent();
  }

  /** Whether the parts are two or more and not all of one family. */
  private static boolean isNews(List<PlaceOfCurve> uses, List<Family> families) {
    List<String> names = uses.stream().map(place -> place.use().part()).distinct().toList();
    return names.size() > 1
        && uses.stream().allMatch(PlaceOfCurve::hasRoomToStop)
        && families.stream()
            .noneMatch(
                family ->
                    family.members().stream().map(FamilyMember::part).toList().containsAll(names));
  }

  private static List<PlaceOfCurve> uses(
      List<RoutingResult> parts, int first, Course host, Path curve, Set<Spot> taken) {
    List<PlaceOfCurve> uses = new ArrayList<>();
    for (int part = 0; part < parts.size(); part++) {
      if (Families.isOneLine(parts.get(first), parts.get(part))) {
        for (Setting.Lay lay : Setting.Lay.values()) {
          uses(parts.get(part), part, lay, host, curve, taken, uses);
        }
      }
    }
    return uses;
  }

  private static void uses(
      RoutingResult result,
      int part,
      Setting.Lay lay,
      Course host,
      Path curve,
      Set<Spot> taken,
      List<PlaceOfCurve> uses) {
    Contour laid = result.part().contour().transformed(lay.turn()).counterClockwise();
    Optional<Course> course = Course.of(laid);
    if (course.isEmpty() || course.get().sense() != host.sense()) {
      return;
    }
    for (int i = 0; i < course.get().size(); i++) {
      // A mirror turns the order of travel round, so its last curve is the part's first.
      boolean mirrored = lay.turn().mirrored();
      Spot spot = new Spot(part, mirrored ? course.get().size() - 1 - i : i);
      if (!taken.contains(spot)
          && CurveMatch.apart(curve, course.get().curves().get(i)) <= Families.TOLERANCE) {
        taken.add(spot);
        Point start = course.get().start(i);
        Point move = curve.start().minus(start);
        Similarity into = lay.turn().then(Similarity.translation(move.x(), move.y()));
        SharedCurve.Use use =
            new SharedCurve.Use(
                result.part().name(),
                new Setting(uses.size() + 1, into, lay, 0),
                left(course.get(), i).x() - laid.loop().bounds().minX(),
                fromBack(course.get(), i, laid.loop().bounds()));
        double[] straights = course.get().straights();
        uses.add(
            new PlaceOfCurve(
                use,
                i == 0 ? Double.POSITIVE_INFINITY : straights[i],
                i == course.get().size() - 1 ? Double.POSITIVE_INFINITY : straights[i + 1]));
      }
    }
  }

  private static Point left(Course course, int curve) {
    return course.sense() > 0 ? course.start(curve) : course.end(curve);
  }

  private static double fromBack(Course course, int curve, Bounds box) {
    double y = left(course, curve).y();
    return course.sense() > 0 ? box.maxY() - y : y - box.minY();
  }
}
