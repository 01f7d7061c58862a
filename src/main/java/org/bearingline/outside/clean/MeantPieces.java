package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;

/**
 * The pieces of a chain, free curves that were meant to be arcs or straights told as such. An arc
 * that the drawing's figures tell only roughly stays a curve that may give way, and so do
 * neighbours that are one circle but for those figures.
 *
 * @param pieces in order
 * @param move mm by which a free curve leaves what it was meant to be, at most
 * @param at where that is
 */
record MeantPieces(List<StrokePiece> pieces, double move, Point at) {

  private static final int SAMPLES = 32;

  /** Share of the tolerance by which a roughly told arc may lie off the curve. */
  private static final double ROUGH = 0.25;

  /** Share of the tolerance by which neighbours on one circle may differ. */
  private static final double ONE = 0.4;

  /** Tolerances of length up to which a piece between them does not part them. */
  private static final double TINY = 5;

  /** mm by which they may differ and are one circle as they are. */
  private static final double SAME = 1e-6;

  static MeantPieces of(List<StrokePiece> drawn, double tolerance) {
    int n = drawn.size();
    List<MeantArc> meant = new ArrayList<>();
    double move = 0;
    Point at = Point.ORIGIN;
    for (StrokePiece piece : drawn) {
      MeantArc arc = of(piece);
      Point farthest = arc == null ? null : farthest(piece, arc.primitive());
      double off = arc == null ? 0 : arc.primitive().distanceTo(farthest);
      if (arc != null && !arc.exact() && off > ROUGH * tolerance) {
        arc = null;
      }
      meant.add(arc);
      if (arc != null && off > move) {
        move = off;
        at = arc.primitive().nearestTo(farthest);
      }
    }
    List<StrokePiece> pieces = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      MeantArc arc = meant.get(i);
      boolean fixed =
          drawn.get(i) instanceof StrokePiece.Plain && !hasNeighbor(meant, i, tolerance);
      pieces.add(arc == null || fixed ? drawn.get(i) : arc.stroke());
    }
    return new MeantPieces(List.copyOf(pieces), move, at);
  }

  // Whether the piece before or after it, tiny ones passed over, is the same circle but for
  // figures.
  private static boolean hasNeighbor(List<MeantArc> meant, int i, double tolerance) {
    MeantArc before = neighbor(meant, i, -1, TINY * tolerance);
    MeantArc after = neighbor(meant, i, 1, TINY * tolerance);
    double same = ONE * tolerance;
    return isNearly(before, meant.get(i), same) || isNearly(meant.get(i), after, same);
  }

  private static MeantArc neighbor(List<MeantArc> meant, int i, int side, double tiny) {
    int n = meant.size();
    int at = Math.floorMod(i + side, n);
    while (at != i && meant.get(at) != null && meant.get(at).primitive().length() <= tiny) {
      at = Math.floorMod(at + side, n);
    }
    return meant.get(at);
  }

  private static MeantArc of(StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      return new MeantArc(plain.primitive(), true);
    }
    return piece instanceof StrokePiece.Free free ? MeantArc.of(free.curve()).orElse(null) : null;
  }

  private static Point farthest(StrokePiece piece, Primitive primitive) {
    Point farthest = piece.start();
    if (piece instanceof StrokePiece.Plain) {
      return farthest;
    }
    for (int i = 1; i < SAMPLES; i++) {
      Point p = ((StrokePiece.Free) piece).curve().pointAt((double) i / SAMPLES);
      farthest = primitive.distanceTo(p) > primitive.distanceTo(farthest) ? p : farthest;
    }
    return farthest;
  }

  private static boolean isNearly(MeantArc before, MeantArc after, double same) {
    if (before == null
        || before == after
        || !(before.primitive() instanceof Arc a)
        || !(after != null && after.primitive() instanceof Arc b)
        || a.sweep() * b.sweep() < 0) {
      return false;
    }
    double apart = a.center().distanceTo(b.center()) + Math.abs(a.radius() - b.radius());
    return apart > SAME && Math.max(off(a, b.middle()), off(a, b.end())) < same;
  }

  private static double off(Arc circle, Point p) {
    return Math.abs(circle.center().distanceTo(p) - circle.radius());
  }
}
