package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;

/** Makes one piece of neighbours that lie on one straight or one circle. */
final class Joining {

  /** Sine of the angle, and distance in mm, within which two pieces are one. */
  private static final double SAME = 2e-9;

  /** mm: where a curve stands still, pieces may be left of less, which have no direction. */
  private static final double LEAST = 1e-11;

  private Joining() {}

  static List<Primitive> joined(List<Primitive> pieces) {
    List<Primitive> out = new ArrayList<>(pieces.size());
    for (Primitive piece : withoutLeast(pieces)) {
      int last = out.size() - 1;
      Optional<Primitive> one = last < 0 ? Optional.empty() : one(out.get(last), piece);
      if (one.isPresent()) {
        out.set(last, one.get());
      } else {
        out.add(piece);
      }
    }
    return out;
  }

  private static List<Primitive> withoutLeast(List<Primitive> pieces) {
    List<Primitive> kept = new ArrayList<>(pieces.size());
    Point start = pieces.get(0).start();
    for (Primitive piece : pieces) {
      if (piece.length() >= LEAST) {
        kept.add(piece.start().equals(start) ? piece : piece.withEnds(start, piece.end()));
        start = piece.end();
      }
    }
    return kept.isEmpty() ? pieces : kept;
  }

  /** The same for a closed chain, which may then start elsewhere. */
  static List<Primitive> joinedRound(List<Primitive> pieces) {
    List<Primitive> out = joined(pieces);
    int last = out.size() - 1;
    if (last > 0) {
      one(out.get(last), out.get(0))
          .ifPresent(
              piece -> {
                out.set(0, piece);
                out.remove(last);
              });
    }
    return out;
  }

  static Optional<Primitive> one(Primitive a, Primitive b) {
    if (a.end().equals(b.end()) || a.start().equals(b.end()) || !smooth(a, b)) {
      return Optional.empty();
    }
    // Cheap refusal before the exact question.
    if (Math.abs(a.curvature() - b.curvature()) > 1e-6 * Math.abs(a.curvature())) {
      return Optional.empty();
    }
    Point ahead = a.tangentAt(0);
    Point chord = b.end().minus(a.start());
    // All but a full circle, or a fold: no one arc from end to end.
    if (Math.abs(ahead.cross(chord)) < 1e-7 * chord.norm() && ahead.dot(chord) < 0) {
      return Optional.empty();
    }
    Primitive one = Continuation.to(a.start(), ahead, b.end());
    boolean same =
        Math.abs(one.tangentAt(1).cross(b.tangentAt(1))) < SAME
            && one.distanceTo(a.end()) < SAME
            && one.distanceTo(a.middle()) < SAME
            && one.distanceTo(b.middle()) < SAME;
    return same ? Optional.of(one) : Optional.empty();
  }

  private static boolean smooth(Primitive a, Primitive b) {
    Point in = a.tangentAt(1);
    Point out = b.tangentAt(0);
    return in.dot(out) > 0 && Math.abs(in.cross(out)) < 1e-8;
  }
}
