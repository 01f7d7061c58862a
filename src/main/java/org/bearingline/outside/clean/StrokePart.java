package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;
import org.bearingline.outside.StrokePiece;

/**
 * A part of a closed chain: one straight of it, or the whole of another piece.
 *
 * @param origin number of its piece in the chain; less than nothing for a straight over a gap
 */
record StrokePart(StrokePiece piece, int origin) {

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

  static StrokePart line(Point from, Point to, int origin) {
    return new StrokePart(new StrokePiece.Plain(new Line(from, to)), origin);
  }

  Point middle() {
    return piece instanceof StrokePiece.Plain plain
        ? plain.primitive().middle()
        : ((StrokePiece.Free) piece).curve().pointAt(0.5);
  }

  /** All parts of a chain, with straights over its gaps. */
  static List<StrokePart> all(Chain chain, double same) {
    List<StrokePart> parts = new ArrayList<>();
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
        parts.add(new StrokePart(piece, i));
        at = piece.end();
      }
    }
    straight(at, first, -1 - chain.pieces().size(), parts, same);
    return parts;
  }

  private static Point straight(
      Point at, Point to, int origin, List<StrokePart> parts, double same) {
    if (at.distanceTo(to) <= same) {
      return at;
    }
    parts.add(line(at, to, origin));
    return to;
  }

  /**
   * The parts, straights cut where the ends of others lie on them that run along.
   *
   * @param same mm within which two lines are one
   */
  static List<StrokePart> cut(List<StrokePart> parts, double same) {
    Pieces lines = new Pieces(parts.size());
    List<StrokePart> straight = parts.stream().filter(StrokePart::isLine).toList();
    straight.forEach(part -> lines.add(part.line(), 0, 0, lines.size()));
    PieceIndex index = new PieceIndex(lines);
    List<StrokePart> cut = new ArrayList<>();
    int at = 0;
    for (StrokePart part : parts) {
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
          cut.add(line(from, end, part.origin()));
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
}
