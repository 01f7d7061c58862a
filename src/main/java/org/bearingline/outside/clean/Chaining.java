package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Joins loose strokes end to end, over small gaps, to chains. */
final class Chaining {

  /** Places that a maker would look up one by one. */
  private static final int MOST_NOTES = 20;

  private final Sketch sketch;
  private final double gap;
  private final ChainJoints joints;
  private final List<Chain> chains = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private Chaining(Sketch sketch, double gap, double tolerance) {
    this.sketch = sketch;
    this.gap = gap;
    joints = new ChainJoints(gap, tolerance);
  }

  /**
   * What came of it.
   *
   * @param doubledStrokes strokes dropped because they lie on others
   */
  record Chained(List<Chain> chains, ClosedGaps gaps, int doubledStrokes, List<String> notes) {}

  static Chained of(Sketch sketch, double gap, double tolerance) {
    Chaining work = new Chaining(sketch, gap, tolerance);
    List<LooseStroke> loose = new ArrayList<>();
    for (int f = 0; f < sketch.figures().size(); f++) {
      Figure figure = sketch.figures().get(f);
      for (Stroke stroke : figure.strokes()) {
        LooseStroke all = new LooseStroke(stroke.pieces(), figure.source(), f);
        if (stroke.closed() || all.isRound()) {
          work.close(all, stroke.closed());
        } else {
          loose.add(all);
        }
      }
    }
    DoubledStrokes single = DoubledStrokes.without(loose, tolerance);
    DoubledRuns runs = DoubledRuns.without(single.kept(), tolerance / 10);
    work.join(runs.kept());
    return new Chained(
        work.chains, work.joints.gaps(), single.dropped() + runs.dropped(), work.notes);
  }

  private void join(List<LooseStroke> loose) {
    List<Point> points = new ArrayList<>();
    List<Point> outward = new ArrayList<>();
    for (LooseStroke one : loose) {
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

  private void follow(List<LooseStroke> loose, Ends ends, int first, boolean[] used) {
    List<StrokePiece> pieces = new ArrayList<>();
    int at = first;
    boolean round = false;
    while (true) {
      int stroke = at / 2;
      used[stroke] = true;
      LooseStroke one = at % 2 == 0 ? loose.get(stroke) : loose.get(stroke).reversed();
      pieces.addAll(one.pieces());
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
    LooseStroke whole =
        new LooseStroke(pieces, loose.get(first / 2).source(), loose.get(first / 2).figure());
    if (round) {
      close(whole, false);
    } else {
      chains.add(new Chain(joints.open(pieces), false, whole.source(), whole.figure()));
    }
  }

  private void close(LooseStroke whole, boolean byStraight) {
    List<StrokePiece> pieces = joints.closed(whole.pieces(), byStraight);
    if (!pieces.isEmpty()) {
      chains.add(new Chain(pieces, true, whole.source(), whole.figure()));
    }
  }
}
