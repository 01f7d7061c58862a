package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
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
   * @param outlines largest area first
   * @param doubledLoops loops dropped because another lies on them
   */
  record Nested(List<Outline> outlines, int doubledLoops, List<Fault> faults, List<String> notes) {}

  static Nested of(List<DrawnLoop> loops, List<Figure> figures, double tolerance) {
    FigureNesting work = new FigureNesting(figures, tolerance);
    List<Loop> kept = new ArrayList<>();
    TreeMap<Integer, List<DrawnLoop>> byFigure = new TreeMap<>();
    for (DrawnLoop loop : work.withoutDoubles(loops)) {
      byFigure.computeIfAbsent(loop.figure(), f -> new ArrayList<>()).add(loop);
    }
    List<String> sources = new ArrayList<>();
    byFigure.forEach(
        (figure, own) -> {
          for (Loop loop : work.figure(figure, own)) {
            kept.add(loop);
            sources.add(own.get(0).source());
          }
        });
    work.crossings(kept, sources, byFigure.size());
    List<Outline> outlines = new ArrayList<>(Nesting.region(kept).pieces());
    outlines.sort(Comparator.comparingDouble(Outline::area).reversed());
    return new Nested(outlines, work.doubled, work.faults, work.notes);
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
        faults.add(new Fault(kind, at, source));
        sound = false;
      }
    }
    FillRule rule = figures.get(number).rule();
    if (loops.size() == 1 || !sound) {
      return loops;
    }
    if (!boxesMeet(loops) || OutlineCheck.crossings(loops).isEmpty()) {
      return rule == FillRule.NON_ZERO ? woundRound(loops, source) : loops;
    }
    if (rule != FillRule.EVEN_ODD) {
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
      if (all != null && all.intersects(box)) {
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

  private void crossings(List<Loop> loops, List<String> sources, int figureCount) {
    if (figureCount < 2 || !faults.isEmpty() || !boxesMeet(loops)) {
      return;
    }
    for (Point at : places(OutlineCheck.crossings(loops))) {
      faults.add(new Fault(Fault.Kind.MEETING, at, near(loops, sources, at)));
    }
  }

  private static String near(List<Loop> loops, List<String> sources, Point at) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < loops.size(); i++) {
      Bounds box = loops.get(i).bounds().grown(1e-3);
      if (box.contains(at)
          && loops.get(i).distanceTo(at) < 1e-3
          && words.indexOf(sources.get(i)) < 0) {
        words.append(words.isEmpty() ? "" : " and ").append(sources.get(i));
      }
    }
    return words.toString();
  }
}
