package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.length.Units;
import org.bearingline.part.Contour;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/**
 * Finds parts that share a curve. Two routed edges match where one can be laid on the other, other
 * face up or turned half round if need be, so that each curve of one falls on one of the other's in
 * the same order; the straights between curves may differ, and each that does asks for one more
 * position of the part on the template.
 */
public final class Families {

  /**
   * Curves whose points lie nearer than this, in mm, are the same: a thousandth of an inch, below
   * what a bearing leaves.
   */
  public static final double TOLERANCE = 0.0254;

  private Families() {}

  /**
   * Families of two parts or more, in the order of their first part. Looked at are parts whose
   * outer edge is routed in one stretch with at least one arc.
   *
   * @param parts in the job's order
   * @param units for the sentences
   */
  public static List<Family> of(List<RoutingResult> parts, Units units) {
    List<Family> families = new ArrayList<>();
    Set<Integer> taken = new HashSet<>();
    for (int first = 0; first < parts.size(); first++) {
      if (!taken.contains(first)) {
        List<Integer> alike = alike(parts, first, taken);
        if (alike.size() > 1) {
          int host = longest(parts, alike);
          List<FamilyBuilder.Guest> guests = guests(parts, host, alike);
          if (!guests.isEmpty()) {
            families.add(new FamilyBuilder(parts.get(host), guests, units).build());
            taken.add(host);
            alike.stream()
                .filter(i -> guests.stream().anyMatch(g -> g.result() == parts.get(i)))
                .forEach(taken::add);
          }
        }
      }
    }
    return families;
  }

  private static List<Integer> alike(List<RoutingResult> parts, int first, Set<Integer> taken) {
    List<Integer> alike = new ArrayList<>();
    Optional<Course> course = course(parts.get(first));
    if (course.isEmpty() || template(parts.get(first)).isEmpty()) {
      return alike;
    }
    for (int other = first; other < parts.size(); other++) {
      if (!taken.contains(other)
          && template(parts.get(other)).isPresent()
          && (matches(parts, first, other) || matches(parts, other, first))) {
        alike.add(other);
      }
    }
    return alike;
  }

  private static boolean matches(List<RoutingResult> parts, int host, int guest) {
    return course(parts.get(host))
        .flatMap(c -> CurveMatch.of(c, contour(parts.get(guest)), TOLERANCE))
        .isPresent();
  }

  private static int longest(List<RoutingResult> parts, List<Integer> alike) {
    int best = alike.get(0);
    for (int i : alike) {
      if (length(parts.get(i)) > length(parts.get(best))) {
        best = i;
      }
    }
    return best;
  }

  private static List<FamilyBuilder.Guest> guests(
      List<RoutingResult> parts, int host, List<Integer> alike) {
    List<FamilyBuilder.Guest> guests = new ArrayList<>();
    Course course = course(parts.get(host)).orElseThrow();
    for (int i : alike) {
      if (i != host) {
        CurveMatch.of(course, contour(parts.get(i)), TOLERANCE)
            .ifPresent(match -> guests.add(new FamilyBuilder.Guest(parts.get(i), match)));
      }
    }
    return guests;
  }

  private static double length(RoutingResult result) {
    return contour(result).loop().bounds().width();
  }

  static Optional<Course> course(RoutingResult result) {
    return Course.of(contour(result));
  }

  private static Contour contour(RoutingResult result) {
    return result.part().contour();
  }

  /** The plate that shapes the outer edge. */
  static Optional<Template> template(RoutingResult result) {
    return result.templates().stream()
        .filter(template -> template.serves().contains(Template.OUTSIDE_EDGE))
        .findFirst();
  }
}
