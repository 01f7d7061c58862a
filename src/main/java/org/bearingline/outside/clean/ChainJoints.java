package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outside.StrokePiece;

/** Lets the pieces of a chain meet where small gaps part them, and keeps a list of these. */
final class ChainJoints {

  /** mm: less is the rounding of a drawing's figures and no gap. */
  private static final double ROUNDING = 1e-6;

  /** mm: a closing straight up to this was never meant. */
  private static final double SMALL = 0.01;

  /** Share of the tolerance below which a straight has no direction of its own. */
  private static final double SAME = 1e-3;

  private final double gap;
  private final double same;
  private final List<Gap> gaps = new ArrayList<>();

  /**
   * @param gap mm over which pieces may be joined
   */
  ChainJoints(double gap, double tolerance) {
    this.gap = gap;
    same = SAME * tolerance;
  }

  private record Gap(double width, Point at) {}

  /** What was closed so far, the widest first. */
  ClosedGaps gaps() {
    gaps.sort(Comparator.comparingDouble(Gap::width).reversed());
    return new ClosedGaps(
        gaps.size(),
        gaps.isEmpty() ? 0 : gaps.get(0).width(),
        gaps.stream().limit(ClosedGaps.MOST_PLACES).map(Gap::at).toList());
  }

  /** The pieces of an open chain. */
  List<StrokePiece> open(List<StrokePiece> given) {
    return inside(given, false);
  }

  /**
   * The pieces of a closed chain. A stroke that its drawing closes may need a straight to do so;
   * any other meets itself.
   *
   * @return none where nothing of it is left
   */
  List<StrokePiece> closed(List<StrokePiece> given, boolean byStraight) {
    List<StrokePiece> pieces = inside(given, true);
    Point end = pieces.get(pieces.size() - 1).end();
    Point start = pieces.get(0).start();
    double apart = end.distanceTo(start);
    boolean small = apart <= Math.max(ROUNDING, Math.min(gap, SMALL));
    if (apart > 0 && (!byStraight || small || apart <= gap && isPast(pieces))) {
      StrokePiece last = pieces.get(pieces.size() - 1);
      StrokePiece first = pieces.get(0);
      Point met = note(last, first);
      if (pieces.size() > 1) {
        pieces.set(pieces.size() - 1, Welding.between(last, last.start(), met));
        pieces.set(0, Welding.between(first, met, first.end()));
      } else {
        pieces.set(0, Welding.between(first, met, met));
      }
    }
    pieces.removeAll(Collections.singleton(null));
    return pieces;
  }

  // Whether the straight that would close it runs back against both its neighbours.
  private static boolean isPast(List<StrokePiece> pieces) {
    StrokePiece last = pieces.get(pieces.size() - 1);
    Point back = pieces.get(0).start().minus(last.end());
    Point in = Welding.arriving(last);
    Point out = Welding.leaving(pieces.get(0));
    return in != null && out != null && in.dot(back) < 0 && out.dot(back) < 0;
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

  private List<StrokePiece> inside(List<StrokePiece> given, boolean closed) {
    List<StrokePiece> pieces = new ArrayList<>(withoutBackSteps(given, closed));
    for (int i = 0; i + 1 < pieces.size(); i++) {
      StrokePiece before = pieces.get(i);
      StrokePiece after = pieces.get(i + 1);
      double apart = before.end().distanceTo(after.start());
      if (apart == 0 || apart > Math.max(gap, ROUNDING)) {
        continue; // Over a wide one the builder of the course runs a straight.
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
