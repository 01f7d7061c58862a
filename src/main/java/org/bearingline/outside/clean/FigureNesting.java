package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Filling;
import org.bearingline.outline.topology.Nesting;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;

/**
 * Makes outlines of loops: within a figure by its rule, among figures by counting how many surround
 * a place. A loop that crosses itself, and figures that cross each other, are faults; loops of one
 * non-zero figure that overlap run together, as such a figure is filled.
 */
final class FigureNesting {

  /** mm within which faults are told once. */
  private static final double ONE_PLACE = 1e-3;

  /** Share of the size by which boxes may miss each other and their loops touch. */
  private static final double TOUCH = 1e-9;

  /** Faults of which each is looked at closely; of more, nobody reads them. */
  private static final int MOST_TOLD = 100;

  private final List<Figure> figures;
  private final double tolerance;
  private final List<Fault> faults = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private int doubled;

  private FigureNesting(List<Figure> figures, double tolerance) {
    this.figures = figures;
    this.tolerance = tolerance;
  }

  /**
   * What the loops enclose.
   *
   * @param outlines in the order of their numbers, the largest first
   * @param doubledLoops loops dropped because another lies on them
   */
  record Nested(List<Outline> outlines, int doubledLoops, List<Fault> faults, List<String> notes) {}

  static Nested of(List<DrawnLoop> loops, List<Figure> figures, double tolerance) {
    FigureNesting work = new FigureNesting(figures, tolerance);
    List<DrawnLoop> kept = work.kept(loops);
    work.crossings(kept);
    return work.nested(kept.stream().map(DrawnLoop::loop).toList());
  }

  /**
   * Loops of figures that were not yet laid over each other.
   *
   * @param loops with wood on one side only, as the rule of their figure says
   * @param doubledLoops loops dropped because another lies on them
   * @param isSound whether no figure crosses itself
   */
  record Single(List<DrawnLoop> loops, int doubledLoops, boolean isSound, List<String> notes) {}

  /** Each figure taken by itself. */
  static Single single(List<DrawnLoop> loops, List<Figure> figures, double tolerance) {
    FigureNesting work = new FigureNesting(figures, tolerance);
    List<DrawnLoop> kept = work.kept(loops);
    return new Single(kept, work.doubled, work.faults.isEmpty(), work.notes);
  }

  // Loops with wood on one side only, each figure taken by itself.
  private List<DrawnLoop> kept(List<DrawnLoop> loops) {
    TreeMap<Integer, List<DrawnLoop>> byFigure = new TreeMap<>();
    for (DrawnLoop loop : withoutDoubles(loops)) {
      byFigure.computeIfAbsent(loop.figure(), f -> new ArrayList<>()).add(loop);
    }
    List<DrawnLoop> kept = new ArrayList<>();
    byFigure.forEach(
        (number, own) -> {
          DrawnLoop first = own.get(0);
          for (Loop loop : figure(number, own)) {
            kept.add(new DrawnLoop(loop, first.source(), number, first.kind()));
          }
        });
    return kept;
  }

  private Nested nested(List<Loop> kept) {
    List<Outline> outlines = LargestFirst.of(Nesting.region(kept).pieces());
    return new Nested(outlines, doubled, faults, notes);
  }

  // Sorted by length, so that only loops of one length are compared.
  private List<DrawnLoop> withoutDoubles(List<DrawnLoop> loops) {
    int n = loops.size();
    Integer[] order = new Integer[n];
    double[] length = new double[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
      length[i] = loops.get(i).loop().length();
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> length[i]));
    boolean[] gone = new boolean[n];
    for (int a = 0; a < n; a++) {
      int i = order[a];
      double reach = 4 * tolerance + 1e-4 * length[i];
      for (int b = a + 1; b < n && length[order[b]] - length[i] <= reach; b++) {
        int j = order[b];
        int later = Math.max(i, j);
        if (!gone[i] && !gone[j] && loops.get(i).isDoubled(loops.get(j), tolerance)) {
          gone[later] = true;
          doubled++;
        }
      }
    }
    List<DrawnLoop> kept = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (!gone[i]) {
        kept.add(loops.get(i));
      }
    }
    return kept;
  }

  private List<Loop> figure(int number, List<DrawnLoop> own) {
    String source = own.get(0).source();
    List<Loop> loops = own.stream().map(DrawnLoop::loop).toList();
    boolean sound = true;
    for (Loop loop : loops) {
      for (Point at : places(OutlineCheck.crossings(List.of(loop)))) {
        boolean crosses = faults.size() >= MOST_TOLD || Passing.crosses(loop, at);
        Fault.Kind kind = crosses ? Fault.Kind.CROSSING : Fault.Kind.TOUCHING;
        kind = own.get(0).kind() == DrawnLoop.Kind.UNITED ? Fault.Kind.NARROW : kind;
        faults.add(new Fault(kind, at, source));
        sound = false;
      }
    }
    if (loops.size() == 1 || !sound) {
      return loops;
    }
    FillRule rule = figures.get(number).rule();
    if (!boxesMeet(loops) || OutlineCheck.crossings(loops).isEmpty()) {
      return rule == FillRule.NON_ZERO ? woundRound(loops, source) : loops;
    }
    if (rule == FillRule.NON_ZERO) {
      Region filled = Filling.nonZero(loops);
      notes.add("loops of " + source + " that overlap were run together");
      return filled.loops();
    }
    for (Point at : places(OutlineCheck.crossings(loops))) {
      faults.add(new Fault(Fault.Kind.CROSSING, at, source));
    }
    return loops;
  }

  // Where four ends meet, each pair of them is told.
  private static List<Point> places(List<OutlineCheck.Fault> found) {
    Set<List<Long>> seen = new HashSet<>();
    List<Point> places = new ArrayList<>();
    for (OutlineCheck.Fault fault : found) {
      Point at = fault.at();
      if (seen.add(List.of(Math.round(at.x() / ONE_PLACE), Math.round(at.y() / ONE_PLACE)))) {
        places.add(at);
      }
    }
    return places;
  }

  private static boolean boxesMeet(List<Loop> loops) {
    Bounds all = null;
    for (Loop loop : loops) {
      Bounds box = loop.bounds();
      if (all != null && all.grown(TOUCH * (all.width() + all.height())).intersects(box)) {
        return true;
      }
      all = all == null ? box : all.union(box);
    }
    return false;
  }

  /** The loops with wood on one side only, by how often those around each wind. */
  private List<Loop> woundRound(List<Loop> loops, String source) {
    Nesting nesting = Nesting.of(loops);
    List<Loop> kept = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      int outside = 0;
      for (int p = nesting.parent(i); p >= 0; p = nesting.parent(p)) {
        outside += loops.get(p).isCounterClockwise() ? 1 : -1;
      }
      int inside = outside + (loops.get(i).isCounterClockwise() ? 1 : -1);
      if ((inside == 0) != (outside == 0)) {
        kept.add(loops.get(i));
      }
    }
    int left = loops.size() - kept.size();
    if (left > 0) {
      notes.add(
          (left == 1 ? "a closed line" : left + " closed lines")
              + " inside "
              + source
              + (left == 1 ? " was" : " were")
              + " left out, for its fill covers both sides; where openings are meant, give the"
              + " shape no fill, or fill-rule evenodd");
    }
    return kept;
  }

  private void crossings(List<DrawnLoop> kept) {
    List<Loop> loops = kept.stream().map(DrawnLoop::loop).toList();
    long figureCount = kept.stream().mapToInt(DrawnLoop::figure).distinct().count();
    if (figureCount < 2 || !faults.isEmpty() || !boxesMeet(loops)) {
      return;
    }
    for (Point at : places(OutlineCheck.crossings(loops))) {
      List<DrawnLoop> near = kept.stream().filter(loop -> isNear(loop.loop(), at)).toList();
      String sources =
          near.stream().map(DrawnLoop::source).distinct().collect(Collectors.joining(" and "));
      faults.add(new Fault(meeting(near), at, sources));
    }
  }

  private static Fault.Kind meeting(List<DrawnLoop> near) {
    if (near.stream().anyMatch(loop -> loop.kind() == DrawnLoop.Kind.LINE)) {
      return Fault.Kind.LINES_MEETING;
    }
    boolean united = near.stream().anyMatch(loop -> loop.kind() == DrawnLoop.Kind.UNITED);
    return united ? Fault.Kind.NARROW : Fault.Kind.MEETING;
  }

  private static boolean isNear(Loop loop, Point at) {
    return loop.bounds().grown(1e-3).contains(at) && loop.distanceTo(at) < 1e-3;
  }
}
