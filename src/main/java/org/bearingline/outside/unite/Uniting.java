package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Filling;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.outline.topology.FlattenedUnion;
import org.bearingline.problem.Problem;

/**
 * Unites outlines: those that cross each other, run along each other or lie against each other
 * become one, exactly, of lines and arcs. One that lies inside another, clear of its edge, is an
 * opening; openings that meet are united as well.
 */
public final class Uniting {

  /** Share of the size by which a flattened union may miss each arc that the check is made by. */
  private static final double FLATTENED = 1e-6;

  /** Share of the area that is rounding. */
  private static final double ROUNDING = 1e-9;

  /** Share of the size within which a place lies on an edge. */
  private static final double SAME = 1e-8;

  private final List<Outline> shapes;
  private final double near;
  private final List<United.Group> groups = new ArrayList<>();

  private Uniting(List<Outline> shapes, double near) {
    this.shapes = shapes;
    this.near = near;
  }

  /**
   * Unites what belongs together.
   *
   * @param given each sound by itself
   * @param tolerance mm by which a circle may be moved for straights that it nearly runs into
   * @param near mm, more than 0: edges that run along each other this near lie against each other,
   *     and wood that is narrower holds nothing together
   * @throws Problem where they cannot be united
   */
  public static United of(List<Outline> given, double tolerance, double near) {
    Tangency laid = Tangency.of(given, tolerance);
    List<Outline> shapes = laid.shapes();
    Uniting work = new Uniting(shapes, near);
    Relations relations = Relations.of(shapes, near);
    Map<Integer, List<Integer>> together = new TreeMap<>();
    for (int i = 0; i < shapes.size(); i++) {
      together.computeIfAbsent(relations.groupOf(i), g -> new ArrayList<>()).add(i);
    }
    together.values().forEach(members -> work.add(members, relations));
    return new United(work.groups, laid.moved());
  }

  private void add(List<Integer> members, Relations relations) {
    boolean isOpening = relations.level(members.get(0)) % 2 != 0;
    if (members.size() == 1) {
      Region alone = Region.of(shapes.get(members.get(0)));
      groups.add(new United.Group(members, isOpening, alone, List.of(), List.of()));
      return;
    }
    List<Loop> loops = new ArrayList<>();
    members.forEach(i -> loops.addAll(shapes.get(i).loops()));
    List<Loop> bridges = relations.bridgesOf(members.get(0));
    loops.addAll(bridges);
    Region whole = whole(members, loops, expected(members, bridges));
    Region sound = Joined.of(Slivers.without(whole, near));
    List<Outline> drawn = members.stream().map(shapes::get).toList();
    groups.add(
        new United.Group(
            members, isOpening, sound, covered(members, sound), Necks.of(sound, drawn, near)));
  }

  // Shapes that others cover: none of the union's edge is theirs, and no hole was theirs to fill.
  private List<Integer> covered(List<Integer> members, Region whole) {
    Bounds box = whole.bounds();
    double same = SAME * (box.width() + box.height());
    List<Point> edge =
        whole.loops().stream()
            .flatMap(loop -> loop.primitives().stream())
            .map(Primitive::middle)
            .toList();
    List<Integer> covered = new ArrayList<>();
    for (int i : members) {
      Outline shape = shapes.get(i);
      Bounds own = shape.bounds().grown(same);
      boolean seen = edge.stream().anyMatch(p -> own.contains(p) && shape.distanceTo(p) <= same);
      boolean fills =
          members.stream()
              .filter(j -> j != i)
              .flatMap(j -> shapes.get(j).openings().stream())
              .anyMatch(opening -> shape.contains(opening.primitives().get(0).middle()));
      if (!seen && !fills) {
        covered.add(i);
      }
    }
    return covered;
  }

  // All at once; where shapes touch in a hair's breadth in many places, one after the other.
  private Region whole(List<Integer> members, List<Loop> loops, Predicate<Region> expected) {
    try {
      return Filling.nonZero(loops, expected);
    } catch (Problem unsure) {
      Region whole = Region.EMPTY;
      for (int i : members) {
        whole = Overlay.union(whole, Region.of(shapes.get(i)));
      }
      if (expected.test(whole)) {
        return whole;
      }
      throw unsure;
    }
  }

  // The area of the same shapes flattened and united by another library, and of what fills gaps.
  private Predicate<Region> expected(List<Integer> members, List<Loop> bridges) {
    List<Outline> given = members.stream().map(shapes::get).toList();
    Bounds box = given.stream().map(Outline::bounds).reduce(Bounds::union).orElseThrow();
    double chord = FLATTENED * Math.max(box.width(), box.height());
    OptionalDouble flattened = FlattenedUnion.area(given, chord);
    if (flattened.isEmpty()) {
      return region -> true;
    }
    double slack = ROUNDING * box.width() * box.height();
    for (Outline outline : given) {
      for (Loop loop : outline.loops()) {
        for (Primitive piece : loop.primitives()) {
          slack += piece.curvature() == 0 ? 0 : chord * piece.length();
        }
      }
    }
    double least = flattened.getAsDouble() - slack;
    double most =
        flattened.getAsDouble()
            + slack
            + bridges.stream().mapToDouble(Loop::length).sum() / 2 * near;
    return region -> region.area() >= least && region.area() <= most;
  }
}
