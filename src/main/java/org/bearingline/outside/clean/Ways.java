package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Point;
import org.bearingline.outside.StrokePiece;

/**
 * The parts of a chain by the places they run between: of two between the same places, both go
 * where they run there and back, and one goes where they run the same way.
 */
final class Ways {

  private final double same;
  private final Places places;
  private final List<StrokePart> parts = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();
  private final Map<Long, List<Integer>> between = new HashMap<>();
  private final List<Boolean> gone = new ArrayList<>();
  private double length;
  private Point at;
  private int doubled;

  Ways(double same) {
    this.same = same;
    places = new Places(same);
  }

  boolean isPlain() {
    return at == null && doubled == 0;
  }

  void add(StrokePart part) {
    int from = places.number(part.start());
    int to = places.number(part.end());
    int own = parts.size();
    parts.add(part);
    ends.add(new int[] {from, to});
    gone.add(false);
    long key = (long) Math.min(from, to) << 32 | Math.max(from, to);
    List<Integer> others = between.computeIfAbsent(key, k -> new ArrayList<>());
    for (int i = others.size() - 1; i >= 0; i--) {
      int other = others.get(i);
      if (from == to || !runsOn(part, parts.get(other))) {
        continue;
      }
      gone.set(own, true);
      if (ends.get(other)[0] == from) {
        doubled++;
      } else {
        others.remove(i);
        gone.set(other, true);
        length += part.start().distanceTo(part.end());
        at = at == null ? part.start() : at;
      }
      return;
    }
    others.add(own);
  }

  private boolean runsOn(StrokePart a, StrokePart b) {
    return a.isLine() && b.isLine()
        || a.isLine() == b.isLine() && a.middle().distanceTo(b.middle()) <= same;
  }

  /** The loops of what is left; null where it does not close. */
  Retraced rest(Chain chain) {
    Map<Integer, List<Integer>> leaving = new HashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      if (!gone.get(i)) {
        leaving.computeIfAbsent(ends.get(i)[0], k -> new ArrayList<>()).add(i);
      }
    }
    List<Chain> chains = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (!gone.get(i)) {
        List<StrokePart> loop = loop(i, leaving);
        if (loop == null) {
          return null;
        }
        chains.add(new Chain(joined(loop, chain), true, chain.source(), chain.figure()));
      }
    }
    return new Retraced(chains, length, at, doubled);
  }

  private List<StrokePart> loop(int first, Map<Integer, List<Integer>> leaving) {
    List<StrokePart> loop = new ArrayList<>();
    int part = first;
    while (true) {
      loop.add(parts.get(part));
      gone.set(part, true);
      leaving.get(ends.get(part)[0]).remove((Integer) part);
      int here = ends.get(part)[1];
      List<Integer> next = leaving.getOrDefault(here, List.of());
      if (here == ends.get(first)[0] && !next.contains(part + 1)) {
        return loop;
      }
      if (next.isEmpty()) {
        return null;
      }
      // On as it was drawn, where that is left.
      part = next.contains(part + 1) ? part + 1 : next.get(0);
    }
  }

  private static List<StrokePiece> joined(List<StrokePart> loop, Chain chain) {
    List<StrokePiece> pieces = new ArrayList<>();
    List<Point> run = new ArrayList<>();
    int origin = Integer.MIN_VALUE;
    for (StrokePart part : loop) {
      boolean chord =
          part.origin() >= 0
              && part.isLine()
              && chain.pieces().get(part.origin()) instanceof StrokePiece.Chords;
      if (!run.isEmpty() && (!chord || part.origin() != origin)) {
        pieces.add(new StrokePiece.Chords(run));
        run = new ArrayList<>();
      }
      origin = part.origin();
      if (!chord) {
        pieces.add(part.piece());
      } else {
        if (run.isEmpty()) {
          run.add(part.start());
        }
        run.add(part.end());
      }
    }
    if (!run.isEmpty()) {
      pieces.add(new StrokePiece.Chords(run));
    }
    return pieces;
  }
}
