package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.topology.Nesting;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.unite.United;
import org.bearingline.outside.unite.Uniting;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Clean chains of which those round filled shapes were united.
 *
 * @param chains the new ones with those that were left alone
 * @param doubledLoops loops dropped because another lies on them
 * @param faults where shapes hold together by next to nothing
 * @param notes what a maker should know, one sentence each
 * @param shapes what was united
 */
record UnitedChains(
    List<CleanChain> chains,
    int doubledLoops,
    List<Fault> faults,
    List<String> notes,
    UnitedShapes shapes) {

  /** Names that a sentence tells. */
  private static final int MOST_NAMES = 3;

  /** Tolerances by which edges drawn on each other may come apart, each made clean alone. */
  private static final double APART = 2;

  private static final UnitedShapes NOTHING = new UnitedShapes(0, 0, 0, 0, 0, 0);

  static UnitedChains of(
      Sketch sized, List<CleanChain> chains, CleaningSettings settings, double tolerance) {
    List<CleanChain> areas = new ArrayList<>();
    List<CleanChain> others = new ArrayList<>();
    List<DrawnLoop> loops = new ArrayList<>();
    for (CleanChain chain : chains) {
      boolean isArea =
          chain.isLoop(tolerance) && sized.figures().get(chain.chain().figure()).filled();
      (isArea ? areas : others).add(chain);
      if (isArea) {
        loops.add(DrawnLoop.of(chain, sized.figures()));
      }
    }
    FigureNesting.Single single = FigureNesting.single(loops, sized.figures(), tolerance);
    List<Shape> shapes = shapes(single.loops());
    if (!single.isSound() || shapes.size() < 2) {
      return new UnitedChains(chains, 0, List.of(), List.of(), NOTHING);
    }
    double near = Math.max(settings.gap(), APART * tolerance);
    United united;
    try {
      united = Uniting.of(shapes.stream().map(Shape::outline).toList(), tolerance, near);
    } catch (Problem unmade) {
      throw unmade.at(Place.file(sized.file()));
    }
    if (!united.isAny()) {
      return new UnitedChains(chains, 0, List.of(), List.of(), NOTHING);
    }
    UnitedLoops made = new UnitedLoops(areas, united.moved(), tolerance, settings);
    int number = sized.figures().size();
    List<Fault> faults = new ArrayList<>();
    List<String> notes = new ArrayList<>(single.notes());
    for (United.Group group : united.groups()) {
      String source = source(group.members(), shapes);
      for (Loop loop : group.region().loops()) {
        made.add(loop, source, number++, group.members().size() > 1);
      }
      group.narrow().forEach(at -> faults.add(new Fault(Fault.Kind.NARROW, at, source)));
      if (!group.covered().isEmpty()) {
        notes.add(
            source(group.covered(), shapes)
                + (group.covered().size() == 1 ? " lies" : " lie")
                + " under the other shapes and changed nothing; an opening there is drawn inside"
                + " one of them, or in an SVG without a fill");
      }
    }
    others.addAll(0, made.chains());
    return new UnitedChains(others, single.doubledLoops(), faults, notes, summary(united, shapes));
  }

  /** One connected piece of a figure. */
  private record Shape(Outline outline, String source) {}

  private static List<Shape> shapes(List<DrawnLoop> loops) {
    TreeMap<Integer, List<DrawnLoop>> byFigure = new TreeMap<>();
    for (DrawnLoop loop : loops) {
      byFigure.computeIfAbsent(loop.figure(), f -> new ArrayList<>()).add(loop);
    }
    List<Shape> shapes = new ArrayList<>();
    for (List<DrawnLoop> own : byFigure.values()) {
      for (Outline outline : Nesting.region(own.stream().map(DrawnLoop::loop).toList()).pieces()) {
        shapes.add(new Shape(outline, own.get(0).source()));
      }
    }
    return shapes;
  }

  private static UnitedShapes summary(United united, List<Shape> shapes) {
    int[] before = new int[2];
    int[] after = new int[2];
    double drawn = 0;
    double area = 0;
    for (United.Group group : united.groups()) {
      int kind = group.isOpening() ? 1 : 0;
      if (group.members().size() > 1) {
        before[kind] += group.members().size();
        after[kind] += group.region().pieces().size();
        if (!group.isOpening()) {
          drawn += group.members().stream().mapToDouble(i -> shapes.get(i).outline().area()).sum();
          area += group.region().area();
        }
      }
    }
    return new UnitedShapes(before[0], after[0], before[1], after[1], drawn, area);
  }

  private static String source(List<Integer> members, List<Shape> shapes) {
    Set<String> names = new LinkedHashSet<>();
    members.forEach(i -> names.add(shapes.get(i).source()));
    List<String> first = names.stream().limit(MOST_NAMES).toList();
    String more = names.size() > MOST_NAMES ? " and others" : "";
    return String.join(" and ", first) + more;
  }
}
