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

  /** Templates whose edges lie nearer to each other than this, in mm, are one line. */
  static final double SAME_LINE = 1e-5;

  private Families() {}

  /**
   * Families of two parts or more, in the order of their first part. Looked at are parts whose
   * outer edge is routed in one stretch with at least one arc, and whose bits and followers want
   * the template's edge at the same distance: each part keeps its own bit.
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

  /** Whether two parts have a template each whose curves one template could give. */
  public static boolean share(RoutingResult a, RoutingResult b) {
    List<RoutingResult> both = List.of(a, b);
    return template(a).isPresent()
        && template(b).isPresent()
        && (matches(both, 0, 1) || matches(both, 1, 0));
  }

  /**
   * One sentence for each part that has the curve of one before it, but wants the template's edge
   * elsewhere.
   */
  public static List<String> apart(List<RoutingResult> parts, Units units) {
    List<String> sentences = new ArrayList<>();
    for (int other = 1; other < parts.size(); other++) {
      RoutingResult here = parts.get(other);
      List<RoutingResult> alike =
          parts.subList(0, other).stream().filter(one -> share(one, here)).toList();
      if (!alike.isEmpty() && alike.stream().noneMatch(one -> isOneLine(one, here))) {
        sentences.add(FamilyWords.apart(alike.get(0), here, units));
      }
    }
    return sentences;
  }

  /** Whether bits and followers want the edges of two templates at the same distance. */
  static boolean isOneLine(RoutingResult a, RoutingResult b) {
    return template(a).isPresent()
        && template(b).isPresent()
        && Math.abs(template(a).get().offset() - template(b).get().offset()) <= SAME_LINE;
  }

  private static List<Integer> alike(List<RoutingResult> parts, int first, Set<Integer> taken) {
    List<Integer> alike = new ArrayList<>();
    Optional<Course> course = course(parts.get(first));
    if (course.isEmpty() || template(parts.get(first)).isEmpty()) {
      return alike;
    }
    for (int other = first; other < parts.size(); other++) {
      if (!taken.contains(other)
          && isOneLine(parts.get(first), parts.get(other))
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
