package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Walks along a course that has no drawn corner on the way, window by window: each goes on from the
 * middle of the one before. Where no smooth line holds, a corner is made.
 */
final class WindowWalk {

  /** How many stretches are solved together. */
  private static final int WINDOW = 16;

  /** Shares of the tolerance for the stretches, one after the other. */
  private static final double[] SHARES = {0.95, 0.6, 0.35, 0.2, 0.1, 0.05};

  /** The first of them: what a course is cut with. */
  static final double SHARE = SHARES[0];

  /** The share for a stretch that stands alone between corners. */
  private static final double ALONE = SHARES[2];

  /** A finer cut with as many pieces is better where it lowers the spread to this share. */
  private static final double BETTER = 0.7;

  /** Share of the tolerance below which a spread is none. */
  private static final double EXACT = 1e-4;

  /** Samples from which an arc may be told to go nearly all the way round. */
  private static final int ROUND = 8;

  private final Fitting fitting;
  private final Course course;
  private final int from;
  private final int end;
  private final List<Group> groups = new ArrayList<>();

  /** How far the walk has come. */
  private int at;

  /** What the next window starts in; null at a corner. */
  private TangentChain.State start;

  /** What the last one must end in: of a ring the state in which its first window started. */
  private TangentChain.State last;

  /** Whether there was no corner yet on a ring. */
  private boolean ring;

  /** The first sample of the group at hand, and its pieces so far. */
  private int groupFrom;

  private List<Primitive> pieces = new ArrayList<>();

  private WindowWalk(Fitting fitting, int from, int end, EndStates ends) {
    this.fitting = fitting;
    this.course = fitting.course();
    this.from = from;
    this.end = end;
    at = from;
    groupFrom = from;
    start = ends.start();
    last = ends.end();
    ring = ends.ring();
  }

  /** The groups from one sample to another. */
  static List<Group> groups(Fitting fitting, int from, int end, EndStates ends) {
    WindowWalk walk = new WindowWalk(fitting, from, end, ends);
    while (walk.at < end) {
      Window best = walk.best();
      if (best == null) {
        walk.corner();
      } else if (best.to() < end && isFull(best)) {
        walk.half(best);
      } else {
        walk.whole(best);
      }
    }
    return walk.groups;
  }

  private static boolean isFull(Window window) {
    return window.stretches().size() == WINDOW;
  }

  private boolean isRound(int to) {
    return ring && at == from && to == end;
  }

  // How a window from here to a sample is held.
  private EndStates held(int to) {
    boolean round = isRound(to);
    return new EndStates(start, to == end && !round ? last : null, round);
  }

  private Window best() {
    Window best = null;
    for (double share : SHARES) {
      if (best != null && (isFull(best) || best.spread() < EXACT * fitting.tolerance())) {
        break;
      }
      List<Stretch> row = row(share);
      if (best != null && row.size() > best.stretches().size()) {
        break;
      }
      Window window = fitting.window(row);
      boolean solved = window.solve(held(window.to()));
      if (solved && best != null && window.to() != best.to()) {
        break;
      }
      if (solved && (best == null || window.spread() < BETTER * best.spread())) {
        best = window;
      }
    }
    return best == null ? null : ShortStretches.without(best, held(best.to()), fitting);
  }

  // The stretches up to the next corner, at most a window of them.
  private List<Stretch> row(double share) {
    Segmentation cut = fitting.cut(share);
    List<Stretch> row = new ArrayList<>();
    int next = at;
    while (next < end && row.size() < WINDOW) {
      Stretch stretch = cut.longest(next, end);
      if (!row.isEmpty() && fitting.isCorner(row.get(row.size() - 1), stretch)) {
        break;
      }
      row.add(stretch);
      next = stretch.to();
    }
    return row;
  }

  // No smooth line: a corner here, and on from it.
  private void corner() {
    if (!pieces.isEmpty()) {
      groups.add(new Group(groupFrom, at, pieces, false));
    }
    // Where a closed course starts with one stretch, that must not come back to its own start.
    int farthest = at == 0 && course.closed ? Math.max(1, end / 2) : end;
    Stretch alone = fitting.cut(ALONE).longest(at, farthest);
    groups.add(new Group(at, alone.to(), List.of(piece(alone)), false));
    goOn(alone.to());
  }

  // The first half of a window stays, the other one is solved again with what follows.
  private void half(Window window) {
    int kept = WINDOW / 2;
    TangentChain chain = window.chain();
    pieces.addAll(chain.primitives(false).subList(0, kept));
    if (ring && at == from) {
      last = chain.state(0);
    }
    at = window.sample(kept);
    start = chain.state(kept);
  }

  // Up to the next corner.
  private void whole(Window window) {
    boolean round = isRound(window.to());
    if (!round && (window.to() < end || last == null)) {
      window.trimEnd();
    }
    if (!round && start == null) {
      window.trimStart();
    }
    pieces.addAll(window.chain().primitives(round));
    boolean closes = ring && window.to() == end && groupFrom == from;
    if (closes && last != null) {
      close();
    }
    groups.add(new Group(groupFrom, window.to(), pieces, closes));
    goOn(window.to());
  }

  // Ends the last piece of a ring where the first one starts, to the last bit.
  private void close() {
    int i = pieces.size() - 1;
    Primitive piece = pieces.get(i);
    Point first = pieces.get(0).start();
    if (piece.start().equals(first)) {
      pieces.remove(i);
    } else {
      pieces.set(i, piece.withEnds(piece.start(), first));
    }
  }

  // From a corner.
  private void goOn(int corner) {
    at = corner;
    groupFrom = corner;
    pieces = new ArrayList<>();
    start = null;
    last = ring ? null : last;
    ring = false;
  }

  private Primitive piece(Stretch s) {
    Point first = s.carrier().foot(course.x[s.from()], course.y[s.from()]);
    Point second = s.carrier().foot(course.x[s.to()], course.y[s.to()]);
    if (s.isStraight()) {
      return new Line(first, second);
    }
    Arc arc = Arc.between(first, second, s.carrier().center(), s.carrier().curvature() > 0);
    double chord = course.at(s.from()).distanceTo(course.at(s.to()));
    // Of samples that stand still next to nothing is left, and no whole turn.
    boolean still =
        arc.length() > Math.PI * chord + fitting.tolerance() && s.to() - s.from() < ROUND;
    return still ? new Line(first, second) : arc;
  }
}
