package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Joins loose strokes end to end, over small gaps, to chains. */
final class Chaining {

  /** mm: less is the rounding of a drawing's figures and no gap. */
  private static final double ROUNDING = 1e-6;

  /** Places that a maker would look up one by one. */
  private static final int MOST_NOTES = 20;

  /** Share of the tolerance below which a straight has no direction of its own. */
  private static final double SAME = 1e-3;

  private final Sketch sketch;
  private final double gap;
  private final double same;
  private final List<Chain> chains = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private int doubled;

  private Chaining(Sketch sketch, double gap, double tolerance) {
    this.sketch = sketch;
    this.gap = gap;
    same = SAME * tolerance;
  }

  private record Gap(double width, Point at) {}

  /**
   * What came of it.
   *
   * @param doubledStrokes strokes dropped because they lie on others
   */
  record Chained(List<Chain> chains, ClosedGaps gaps, int doubledStrokes, List<String> notes) {}

  static Chained of(Sketch sketch, double gap, double tolerance) {
    Chaining work = new Chaining(sketch, gap, tolerance);
    List<Loose> loose = new ArrayList<>();
    for (int f = 0; f < sketch.figures().size(); f++) {
      Figure figure = sketch.figures().get(f);
      for (Stroke stroke : figure.strokes()) {
        Loose all = new Loose(stroke.pieces(), figure.source(), f);
        if (stroke.closed() || all.isRound()) {
          work.close(all, stroke.closed());
        } else {
          loose.add(all);
        }
      }
    }
    DoubledStrokes single = DoubledStrokes.without(loose, tolerance);
    DoubledRuns runs = DoubledRuns.without(single.kept(), tolerance / 10);
    work.doubled = single.dropped() + runs.dropped();
    work.join(runs.kept());
    return new Chained(work.chains, work.closedGaps(), work.doubled, work.notes);
  }

  /** A stroke, or strokes already joined. */
  record Loose(List<StrokePiece> pieces, String source, int figure) {

    Point start() {
      return pieces.get(0).start();
    }

    Point end() {
      return pieces.get(pieces.size() - 1).end();
    }

    boolean isRound() {
      return start().equals(end());
    }

    Loose reversed() {
      List<StrokePiece> back = new ArrayList<>();
      for (int i = pieces.size() - 1; i >= 0; i--) {
        back.add(Welding.reversed(pieces.get(i)));
      }
      return new Loose(back, source, figure);
    }
  }

  private ClosedGaps closedGaps() {
    gaps.sort(Comparator.comparingDouble(Gap::width).reversed());
    return new ClosedGaps(
        gaps.size(),
        gaps.isEmpty() ? 0 : gaps.get(0).width(),
        gaps.stream().limit(ClosedGaps.MOST_PLACES).map(Gap::at).toList());
  }

  private void join(List<Loose> loose) {
    List<Point> points = new ArrayList<>();
    List<Point> outward = new ArrayList<>();
    for (Loose one : loose) {
      points.add(one.start());
      points.add(one.end());
      Point leaving = Welding.leaving(one.pieces().get(0));
      outward.add(leaving == null ? null : leaving.times(-1));
      outward.add(Welding.arriving(one.pieces().get(one.pieces().size() - 1)));
    }
    Ends ends = new Ends(points, outward, gap);
    for (Point p : ends.crowded()) {
      String told =
          "more than two lines meet at " + sketch.place(p) + "; the nearest two were joined";
      if (!notes.contains(told) && notes.size() < MOST_NOTES) {
        notes.add(told);
      }
    }
    boolean[] used = new boolean[loose.size()];
    for (int pass = 0; pass < 2; pass++) {
      // Open chains first, from an end that nothing joins; what is left after them is round.
      for (int e = 0; e < points.size(); e++) {
        if (!used[e / 2] && (pass == 1 || ends.mate(e) < 0)) {
          follow(loose, ends, e, used);
        }
      }
    }
  }

  private void follow(List<Loose> loose, Ends ends, int first, boolean[] used) {
    List<StrokePiece> pieces = new ArrayList<>();
    int at = first;
    boolean round = false;
    while (true) {
      int stroke = at / 2;
      used[stroke] = true;
      Loose one = at % 2 == 0 ? loose.get(stroke) : loose.get(stroke).reversed();
      append(pieces, one.pieces());
      int next = ends.mate(at ^ 1);
      if (next == first || next >= 0 && used[next / 2]) {
        round = next == first;
        break;
      }
      if (next < 0) {
        break;
      }
      at = next;
    }
    Loose whole = new Loose(pieces, loose.get(first / 2).source(), loose.get(first / 2).figure());
    if (round) {
      close(whole, false);
    } else {
      chains.add(new Chain(weldedInside(pieces, false), false, whole.source(), whole.figure()));
    }
  }

  private static void append(List<StrokePiece> pieces, List<StrokePiece> more) {
    pieces.addAll(more);
  }

  // A stroke that its drawing closes may need a straight to do so; any other meets itself.
  private void close(Loose whole, boolean byStraight) {
    List<StrokePiece> pieces = weldedInside(whole.pieces(), true);
    Point end = pieces.get(pieces.size() - 1).end();
    Point start = pieces.get(0).start();
    double apart = end.distanceTo(start);
    boolean small = apart <= Math.max(ROUNDING, Math.min(gap, 0.01));
    if (apart > 0 && (!byStraight || small || apart <= gap && isPast(pieces))) {
      StrokePiece last = pieces.get(pieces.size() - 1);
      StrokePiece first = pieces.get(0);
      if (pieces.size() > 1) {
        Point met = note(last, first);
        put(pieces, pieces.size() - 1, Welding.between(last, last.start(), met));
        put(pieces, 0, Welding.between(first, met, first.end()));
      } else {
        Point met = note(last, first);
        put(pieces, 0, Welding.between(first, met, met));
      }
    }
    pieces.removeAll(Collections.singleton(null));
    if (!pieces.isEmpty()) {
      chains.add(new Chain(pieces, true, whole.source(), whole.figure()));
    }
  }

  // Whether the straight that would close it runs back against both its neighbours.
  private static boolean isPast(List<StrokePiece> pieces) {
    StrokePiece last = pieces.get(pieces.size() - 1);
    Point back = pieces.get(0).start().minus(last.end());
    Point in = Welding.arriving(last);
    Point out = Welding.leaving(pieces.get(0));
    return in != null && out != null && in.dot(back) < 0 && out.dot(back) < 0;
  }

  private static void put(List<StrokePiece> pieces, int at, StrokePiece piece) {
    pieces.set(at, piece);
  }

  private Point note(StrokePiece before, StrokePiece after) {
    double apart = before.end().distanceTo(after.start());
    Point met = Welding.meeting(before, after, gap);
    if (apart > ROUNDING) {
      gaps.add(new Gap(apart, met));
    }
    return met;
  }

  // Straights shorter than a gap that run back against both their neighbours stand for one, such as
  // a closing straight where the last curve ends a little past the first.
  private List<StrokePiece> withoutBackSteps(List<StrokePiece> given, boolean closed) {
    int n = given.size();
    List<StrokePiece> kept = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean inside = closed || i > 0 && i < n - 1;
      StrokePiece before = given.get((i + n - 1) % n);
      if (n < 3 || !inside || !isBackStep(before, given.get(i), given.get((i + 1) % n))) {
        kept.add(given.get(i));
      }
    }
    return kept.size() < 2 ? given : kept;
  }

  private boolean isBackStep(StrokePiece before, StrokePiece piece, StrokePiece after) {
    if (!(piece instanceof StrokePiece.Plain plain && plain.primitive() instanceof Line line)) {
      return false;
    }
    if (line.length() <= same) {
      return true;
    }
    Point in = Welding.arriving(before);
    Point out = Welding.leaving(after);
    Point along = line.tangentAt(0);
    return line.length() <= gap
        && in != null
        && out != null
        && in.dot(along) < 0
        && out.dot(along) < 0;
  }

  private List<StrokePiece> weldedInside(List<StrokePiece> given, boolean closed) {
    List<StrokePiece> pieces = new ArrayList<>(withoutBackSteps(given, closed));
    for (int i = 0; i + 1 < pieces.size(); i++) {
      StrokePiece before = pieces.get(i);
      StrokePiece after = pieces.get(i + 1);
      double apart = before.end().distanceTo(after.start());
      if (apart == 0) {
        continue;
      }
      if (apart > Math.max(gap, ROUNDING)) {
        continue; // The builder of the course runs a straight there.
      }
      Point met = note(before, after);
      StrokePiece shorter = Welding.between(before, before.start(), met);
      StrokePiece longer = Welding.between(after, met, after.end());
      if (shorter != null && longer != null) {
        pieces.set(i, shorter);
        pieces.set(i + 1, longer);
      }
    }
    return pieces;
  }
}
