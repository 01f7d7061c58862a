package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;
import org.bearingline.outside.StrokePiece;

/**
 * Drops loose strokes of several pieces that were drawn over others.
 *
 * @param kept what is left, in the order given
 * @param dropped how many were dropped
 */
record DoubledRuns(List<LooseStroke> kept, int dropped) {

  /** Pairs of strokes compared in full; a drawing with more of them is compared no further. */
  private static final int MOST_COMPARED = 10_000;

  /** Looks along a free curve. */
  private static final int LOOKS = 32;

  static DoubledRuns without(List<LooseStroke> loose, double same) {
    int n = loose.size();
    List<List<Point>> looks = new ArrayList<>();
    List<Bounds> boxes = new ArrayList<>();
    Pieces frames = new Pieces(n);
    for (int i = 0; i < n; i++) {
      List<Point> points = isRun(loose.get(i)) ? looks(loose.get(i)) : List.of();
      Bounds box = points.stream().map(Bounds::of).reduce(Bounds::union).orElse(null);
      looks.add(points);
      boxes.add(box == null ? Bounds.of(loose.get(i).start()) : box);
      Bounds frame = boxes.get(i);
      frames.add(diagonal(frame), 0, 0, i);
    }
    PieceIndex index = new PieceIndex(frames);
    boolean[] gone = new boolean[n];
    int compared = 0;
    int dropped = 0;
    for (int i = n - 1; i >= 0; i--) {
      int count = looks.get(i).isEmpty() ? 0 : index.queryAround(i, same);
      int[] hits = Arrays.copyOf(index.hits(), count);
      for (int j : hits) {
        boolean may = j != i && !gone[j] && !looks.get(j).isEmpty() && !gone[i];
        if (may && within(boxes.get(i), boxes.get(j), same) && compared++ < MOST_COMPARED) {
          gone[i] = liesOn(looks.get(i), looks.get(j), same);
          dropped += gone[i] ? 1 : 0;
        }
      }
    }
    List<LooseStroke> kept = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (!gone[i]) {
        kept.add(loose.get(i));
      }
    }
    return new DoubledRuns(kept, dropped);
  }

  private static boolean isRun(LooseStroke stroke) {
    return stroke.pieces().size() > 1 || !(stroke.pieces().get(0) instanceof StrokePiece.Plain);
  }

  private static Line diagonal(Bounds box) {
    // A stroke without extent still has its place.
    return new Line(
        new Point(box.minX() - 1e-9, box.minY()), new Point(box.maxX() + 1e-9, box.maxY()));
  }

  private static boolean within(Bounds inner, Bounds outer, double same) {
    Bounds grown = outer.grown(same);
    return grown.contains(new Point(inner.minX(), inner.minY()))
        && grown.contains(new Point(inner.maxX(), inner.maxY()));
  }

  // Every place looked at on the one, and the middle between it and the next, is on the other.
  private static boolean liesOn(List<Point> run, List<Point> other, double same) {
    Pieces lines = new Pieces(other.size());
    for (int i = 0; i + 1 < other.size(); i++) {
      if (!other.get(i).equals(other.get(i + 1))) {
        lines.add(new Line(other.get(i), other.get(i + 1)), 0, 0, i);
      }
    }
    PieceIndex index = new PieceIndex(lines);
    for (int i = 0; i < run.size(); i++) {
      Point next = run.get(Math.min(i + 1, run.size() - 1));
      if (!near(run.get(i), lines, index, same)
          || !near(run.get(i).towards(next, 0.5), lines, index, same)) {
        return false;
      }
    }
    return true;
  }

  private static boolean near(Point p, Pieces lines, PieceIndex index, double same) {
    int count = index.query(p.x() - same, p.y() - same, p.x() + same, p.y() + same);
    for (int h = 0; h < count; h++) {
      if (lines.distance(index.hits()[h], p.x(), p.y()) <= same) {
        return true;
      }
    }
    return false;
  }

  private static List<Point> looks(LooseStroke stroke) {
    List<Point> points = new ArrayList<>();
    for (StrokePiece piece : stroke.pieces()) {
      if (piece instanceof StrokePiece.Chords chords) {
        points.addAll(chords.points());
      } else {
        for (int i = 0; i <= LOOKS; i++) {
          double t = (double) i / LOOKS;
          points.add(
              piece instanceof StrokePiece.Plain plain
                  ? plain.primitive().pointAt(t)
                  : ((StrokePiece.Free) piece).curve().pointAt(t));
        }
      }
    }
    return points;
  }
}
