package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Drops the steps of a union: short pieces, together no longer than the tolerance, that are left of
 * the corner of a shape on which another was drawn. Where the edge runs on behind them, straights
 * on both their sides become one and others meet; at a corner the neighbours meet where their
 * carriers do.
 */
final class FewerSteps {

  /** How far, in tolerances, a corner may move. */
  private static final double REACH = 2;

  /** How far, in tolerances, a straight may lie from the pieces that it stands for. */
  private static final double STRAIGHT = 0.5;

  /** Cosine of how far such a piece may turn: 10°. */
  private static final double ALONG = 0.985;

  /** Pieces looked ahead at. */
  private static final int MOST = 8;

  private final double tolerance;
  private final double sharp;
  private final List<Primitive> kept = new ArrayList<>();

  private FewerSteps(double tolerance, double sharpDegrees) {
    this.tolerance = tolerance;
    sharp = Math.toRadians(sharpDegrees);
  }

  /** The pieces of a loop without its steps; the same list where there are none. */
  static List<Primitive> of(List<Primitive> loop, double tolerance, double sharpDegrees) {
    int n = loop.size();
    int seam = 0;
    while (seam < n && loop.get(seam).length() <= tolerance) {
      seam++;
    }
    if (seam == n || n < 3) {
      return loop;
    }
    FewerSteps work = new FewerSteps(tolerance, sharpDegrees);
    List<Primitive> steps = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Primitive piece = loop.get((seam + k) % n);
      if (piece.length() <= tolerance) {
        steps.add(piece);
      } else {
        work.add(steps, piece);
        steps.clear();
      }
    }
    work.close(steps);
    work.straighten();
    boolean fewer = work.kept.size() < n && work.kept.size() > 1 && isWhole(work.kept);
    return fewer ? List.copyOf(work.kept) : loop;
  }

  // Of pieces from one straight to another, the whole where it stays on their course.
  private void straighten() {
    for (int i = 0; i < kept.size(); i++) {
      for (int j = Math.min(kept.size() - 1, i + MOST); j > i; j--) {
        if (kept.get(i) instanceof Line first
            && kept.get(j) instanceof Line last
            && isStraight(i, j, first.start(), last.end())) {
          kept.subList(i, j + 1).clear();
          kept.add(i, new Line(first.start(), last.end()));
          break;
        }
      }
    }
  }

  private boolean isStraight(int from, int to, Point start, Point end) {
    if (start.equals(end)) {
      return false;
    }
    Line whole = new Line(start, end);
    Point along = whole.tangentAt(0);
    return kept.subList(from, to + 1).stream()
        .allMatch(
            piece ->
                whole.distanceTo(piece.start()) <= STRAIGHT * tolerance
                    && whole.distanceTo(piece.middle()) <= STRAIGHT * tolerance
                    && piece.tangentAt(0).dot(along) > ALONG
                    && piece.tangentAt(1).dot(along) > ALONG);
  }

  private static boolean isWhole(List<Primitive> pieces) {
    for (int i = 0; i < pieces.size(); i++) {
      Point next = pieces.get((i + 1) % pieces.size()).start();
      if (pieces.get(i).end().distanceTo(next) > Loop.JOIN_TOLERANCE) {
        return false;
      }
    }
    return true;
  }

  private void add(List<Primitive> steps, Primitive piece) {
    if (!steps.isEmpty()) {
      Primitive[] met = met(kept.get(kept.size() - 1), steps, piece);
      if (met == null) {
        kept.addAll(steps);
      } else {
        kept.remove(kept.size() - 1);
        if (met.length == 2) {
          kept.add(met[0]);
        }
        kept.add(met[met.length - 1]);
        return;
      }
    }
    kept.add(piece);
  }

  // Round the seam: the first piece is met by the last.
  private void close(List<Primitive> steps) {
    if (steps.isEmpty()) {
      return;
    }
    Primitive[] met = met(kept.get(kept.size() - 1), steps, kept.get(0));
    if (met == null) {
      kept.addAll(steps);
    } else if (met.length == 2) {
      kept.set(kept.size() - 1, met[0]);
      kept.set(0, met[1]);
    } else {
      kept.remove(kept.size() - 1);
      kept.set(0, met[0]);
    }
  }

  // The two neighbours without the steps between them, or the one that they make; null where they
  // do not meet.
  private Primitive[] met(Primitive before, List<Primitive> steps, Primitive after) {
    double length = steps.stream().mapToDouble(Primitive::length).sum();
    if (length > tolerance || before == after) {
      return null;
    }
    Point from = before.end();
    Point to = after.start();
    if (Joints.bend(before.tangentAt(1), after.tangentAt(0)) <= sharp) {
      if (before instanceof Line && after instanceof Line) {
        Line whole = new Line(before.start(), after.end());
        boolean isOne = Math.max(whole.distanceTo(from), whole.distanceTo(to)) <= tolerance;
        return isOne ? new Primitive[] {whole} : meeting(before, after, from.towards(to, 0.5));
      }
      // An arc holds its place; a straight goes to it.
      Point at = before instanceof Line ? to : after instanceof Line ? from : from.towards(to, 0.5);
      return meeting(before, after, at);
    }
    Point at = Corners.meeting(Carrier.of(before), Carrier.of(after), from.towards(to, 0.5));
    boolean isNear =
        at != null && Math.max(at.distanceTo(from), at.distanceTo(to)) <= REACH * tolerance;
    return isNear ? meeting(before, after, at) : null;
  }

  private static Primitive[] meeting(Primitive before, Primitive after, Point at) {
    if (at.equals(before.start()) || at.equals(after.end())) {
      return null;
    }
    return new Primitive[] {
      ending(before, at), ending(after.reversed(), at).reversed(),
    };
  }

  private static Primitive ending(Primitive piece, Point at) {
    return piece instanceof Line ? new Line(piece.start(), at) : Corners.ending(piece, at);
  }
}
