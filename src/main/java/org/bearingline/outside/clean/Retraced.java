package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;
import org.bearingline.outside.StrokePiece;

/**
 * Takes out of a closed chain what runs there and back along itself and encloses nothing: spikes
 * without width, and the bridge by which an opening is tied to its outline in one stroke; of what
 * runs twice the same way, one is left. The rest may fall into several loops.
 *
 * @param chains what is left
 * @param length mm of line that ran there and back, each counted once
 * @param at where the first of it was drawn
 * @param doubled pieces that ran twice the same way
 */
record Retraced(List<Chain> chains, double length, Point at, int doubled) {

  /** Radians that a joint lacks of a whole turn back, below which it may be the tip of a spike. */
  private static final double FOLD = 0.01;

  /** Whether a clean loop meets itself or has the tip of a spike. */
  static boolean isSuspicious(List<Primitive> pieces) {
    int n = pieces.size();
    for (int i = 0; i < n; i++) {
      Point in = pieces.get(i).tangentAt(1);
      Point out = pieces.get((i + 1) % n).tangentAt(0);
      if (n > 1 && in.dot(out) < 0 && Math.abs(in.cross(out)) < FOLD) {
        return true;
      }
    }
    return !OutlineCheck.crossings(List.of(new Loop(pieces))).isEmpty();
  }

  /**
   * The chain without; null where nothing of it runs there and back or twice.
   *
   * @param same mm within which two lines are one
   */
  static Retraced without(Chain chain, double same) {
    List<Part> parts = Part.all(chain, same);
    Ways ways = new Ways(same);
    List<Part> cut = cut(parts, same);
    cut.forEach(ways::add);
    return ways.isPlain() ? null : ways.rest(chain);
  }

  /** A stretch of a stroke piece: one chord of many, or the whole of another piece. */
  private record Part(StrokePiece piece, int origin) {

    Point start() {
      return piece.start();
    }

    Point end() {
      return piece.end();
    }

    boolean isLine() {
      return piece instanceof StrokePiece.Plain plain && plain.primitive() instanceof Line;
    }

    Line line() {
      return (Line) ((StrokePiece.Plain) piece).primitive();
    }

    static Part line(Point from, Point to, int origin) {
      return new Part(new StrokePiece.Plain(new Line(from, to)), origin);
    }

    Point middle() {
      return piece instanceof StrokePiece.Plain plain
          ? plain.primitive().middle()
          : ((StrokePiece.Free) piece).curve().pointAt(0.5);
    }

    static List<Part> all(Chain chain, double same) {
      List<Part> parts = new ArrayList<>();
      Point first = chain.pieces().get(0).start();
      Point at = first;
      for (int i = 0; i < chain.pieces().size(); i++) {
        StrokePiece piece = chain.pieces().get(i);
        at = straight(at, piece.start(), -1 - i, parts, same);
        if (piece instanceof StrokePiece.Chords chords) {
          for (Point p : chords.points()) {
            at = straight(at, p, i, parts, same);
          }
        } else {
          parts.add(new Part(piece, i));
          at = piece.end();
        }
      }
      straight(at, first, -1 - chain.pieces().size(), parts, same);
      return parts;
    }

    private static Point straight(Point at, Point to, int origin, List<Part> parts, double same) {
      if (at.distanceTo(to) <= same) {
        return at;
      }
      parts.add(line(at, to, origin));
      return to;
    }
  }

  /** Straights cut where the ends of others lie on them that run along. */
  private static List<Part> cut(List<Part> parts, double same) {
    Pieces lines = new Pieces(parts.size());
    List<Part> straight = parts.stream().filter(Part::isLine).toList();
    straight.forEach(part -> lines.add(part.line(), 0, 0, lines.size()));
    PieceIndex index = new PieceIndex(lines);
    List<Part> cut = new ArrayList<>();
    int at = 0;
    for (Part part : parts) {
      if (!part.isLine()) {
        cut.add(part);
        continue;
      }
      int count = index.queryAround(at, same);
      List<Point> ends = new ArrayList<>();
      for (int h = 0; h < count; h++) {
        if (index.hits()[h] != at) {
          along(part.line(), straight.get(index.hits()[h]).line(), same, ends);
        }
      }
      at++;
      Point from = part.start();
      ends.sort((p, q) -> Double.compare(p.distanceTo(part.start()), q.distanceTo(part.start())));
      ends.add(part.end());
      for (Point end : ends) {
        if (end.distanceTo(from) > same || end == part.end()) {
          cut.add(Part.line(from, end, part.origin()));
          from = end;
        }
      }
    }
    return cut;
  }

  private static void along(Line line, Line other, double same, List<Point> ends) {
    double shorter = Math.min(line.length(), other.length());
    if (Math.abs(line.tangentAt(0).cross(other.tangentAt(0))) * shorter > 2 * same) {
      return;
    }
    for (Point p : List.of(other.start(), other.end())) {
      if (line.distanceTo(p) <= same
          && p.distanceTo(line.start()) > same
          && p.distanceTo(line.end()) > same) {
        ends.add(p);
      }
    }
  }

  /** The parts by the places they run between. */
  private static final class Ways {

    private final Places places;
    private final List<Part> parts = new ArrayList<>();
    private final List<int[]> ends = new ArrayList<>();
    private final Map<Long, List<Integer>> between = new HashMap<>();
    private final List<Boolean> gone = new ArrayList<>();
    private double length;
    private Point at;
    private int doubled;

    Ways(double same) {
      places = new Places(same);
    }

    boolean isPlain() {
      return at == null && doubled == 0;
    }

    void add(Part part) {
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

    private boolean runsOn(Part a, Part b) {
      return a.isLine() && b.isLine()
          || a.isLine() == b.isLine() && a.middle().distanceTo(b.middle()) <= places.same;
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
          List<Part> loop = loop(i, leaving);
          if (loop == null) {
            return null;
          }
          chains.add(new Chain(joined(loop, chain), true, chain.source(), chain.figure()));
        }
      }
      return new Retraced(chains, length, at, doubled);
    }

    private List<Part> loop(int first, Map<Integer, List<Integer>> leaving) {
      List<Part> loop = new ArrayList<>();
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

    private static List<StrokePiece> joined(List<Part> loop, Chain chain) {
      List<StrokePiece> pieces = new ArrayList<>();
      List<Point> run = new ArrayList<>();
      int origin = Integer.MIN_VALUE;
      for (Part part : loop) {
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

  /** Numbers places; those nearer to each other than a distance are one. */
  private static final class Places {

    private final double same;
    private final Map<Long, List<Integer>> cells = new HashMap<>();
    private final List<Point> known = new ArrayList<>();

    Places(double same) {
      this.same = same;
    }

    int number(Point p) {
      long column = (long) Math.floor(p.x() / same);
      long row = (long) Math.floor(p.y() / same);
      for (long c = column - 1; c <= column + 1; c++) {
        for (long r = row - 1; r <= row + 1; r++) {
          for (int i : cells.getOrDefault(key(c, r), List.of())) {
            if (known.get(i).distanceTo(p) <= same) {
              return i;
            }
          }
        }
      }
      known.add(p);
      cells.computeIfAbsent(key(column, row), k -> new ArrayList<>()).add(known.size() - 1);
      return known.size() - 1;
    }

    private static long key(long column, long row) {
      return column * 0x9E3779B97F4A7C15L + row;
    }
  }
}
