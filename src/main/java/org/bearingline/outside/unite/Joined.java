package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/** Makes one piece of neighbours that lie on one straight or one circle but for rounding. */
final class Joined {

  /** Share of the size that is rounding of a shape drawn askew. */
  private static final double ROUNDING = 1e-11;

  /** How many roundings long a step is at most. */
  private static final double STEP = 1e3;

  /** Sine of a turn that is rounding. */
  private static final double STRAIGHT = 1e-8;

  private final double same;

  private Joined(double same) {
    this.same = same;
  }

  static Region of(Region region) {
    double size = region.bounds().width() + region.bounds().height();
    Joined work = new Joined(ROUNDING * size);
    List<Outline> pieces = new ArrayList<>();
    for (Outline piece : region.pieces()) {
      pieces.add(
          new Outline(
              work.joined(piece.outer()), piece.openings().stream().map(work::joined).toList()));
    }
    return new Region(pieces);
  }

  private Loop joined(Loop loop) {
    List<Primitive> kept = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      append(kept, piece);
    }
    // Round the seam as well.
    while (kept.size() > 2) {
      Optional<Primitive> one = one(kept.get(kept.size() - 1), kept.get(0));
      if (one.isEmpty()) {
        break;
      }
      kept.set(0, one.get());
      kept.remove(kept.size() - 1);
    }
    return kept.size() == loop.size() ? loop : new Loop(kept);
  }

  // What was joined may join the one before as well: a step beside a longer piece has no direction.
  private void append(List<Primitive> kept, Primitive piece) {
    Primitive last = piece;
    while (!kept.isEmpty()) {
      Optional<Primitive> one = one(kept.get(kept.size() - 1), last);
      if (one.isEmpty()) {
        break;
      }
      last = one.get();
      kept.remove(kept.size() - 1);
    }
    kept.add(last);
  }

  private Optional<Primitive> one(Primitive before, Primitive piece) {
    if (before instanceof Arc a && piece instanceof Arc b) {
      boolean one =
          a.center().distanceTo(b.center()) + Math.abs(a.radius() - b.radius()) <= same
              && a.sweep() * b.sweep() > 0
              && Math.abs(a.sweep() + b.sweep()) < 360;
      return one
          ? Optional.of(new Arc(a.center(), a.radius(), a.start(), b.end(), a.sweep() + b.sweep()))
          : Optional.empty();
    }
    if (before instanceof Line a
        && piece instanceof Line b
        && a.end().minus(a.start()).dot(b.end().minus(b.start())) > 0) {
      Line whole = new Line(a.start(), b.end());
      // A step has no direction of its own; longer pieces, such as fine chords, may not turn.
      double turn = Math.abs(a.tangentAt(0).cross(b.tangentAt(0)));
      boolean step = Math.min(a.length(), b.length()) <= STEP * same;
      return whole.distanceTo(a.end()) <= same && (step || turn <= STRAIGHT)
          ? Optional.of(whole)
          : Optional.empty();
    }
    return Optional.empty();
  }
}
