package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out of a window the stretches that its neighbours can do without: one much shorter than
 * they are is what the longest ones happened to leave over.
 */
final class ShortStretches {

  /** Share of its neighbours' length below which a stretch is tried to be left out. */
  private static final double SHORT = 0.35;

  /** Ratio of curvatures from which two neighbours may be one. */
  private static final double ALIKE = 0.8;

  private final Course course;
  private final boolean startHeld;

  private ShortStretches(Course course, boolean startHeld) {
    this.course = course;
    this.startHeld = startHeld;
  }

  /**
   * The window without, solved.
   *
   * @param ends how it was solved
   */
  static Window without(Window window, EndStates ends, Fitting fitting) {
    ShortStretches work = new ShortStretches(fitting.course(), ends.start() != null);
    Window best = window;
    int i = 0;
    while (i < best.stretches().size()) {
      List<Stretch> fewer = work.without(best.stretches(), i);
      Window shorter = fewer == null ? null : fitting.window(fewer);
      if (shorter != null && shorter.solve(ends)) {
        best = shorter;
      } else {
        i++;
      }
    }
    return best;
  }

  // Its neighbours take its samples over; null where it is needed.
  private List<Stretch> without(List<Stretch> all, int i) {
    int n = all.size();
    if (n < 2 || i == 0 && startHeld || n == 2 && !startHeld) {
      return null;
    }
    Stretch one = all.get(i);
    Stretch before = i > 0 ? all.get(i - 1) : null;
    Stretch after = i < n - 1 ? all.get(i + 1) : null;
    if (!mayGo(before, one, after)) {
      return null;
    }
    int half = (one.from() + one.to()) / 2;
    half = before == null || before.drawn() ? one.from() : half;
    half = after == null || after.drawn() && !before.drawn() ? one.to() : half;
    List<Stretch> fewer = new ArrayList<>(all);
    if (before != null) {
      fewer.set(i - 1, new Stretch(before.from(), half, before.carrier(), before.drawn()));
    }
    if (after != null) {
      fewer.set(i + 1, new Stretch(half, after.to(), after.carrier(), after.drawn()));
    }
    fewer.remove(i);
    return fewer;
  }

  private boolean mayGo(Stretch before, Stretch one, Stretch after) {
    boolean betweenStraights =
        before != null && after != null && before.isStraight() && after.isStraight();
    boolean small = length(one) <= SHORT * Math.min(length(before), length(after));
    boolean alike = alike(one, before) || alike(one, after);
    // At the very start, what is drawn as an arc would have to reach back over it.
    boolean onlyDrawn = before == null && after != null && after.drawn();
    return !one.drawn() && !betweenStraights && !onlyDrawn && (small || alike);
  }

  private static boolean alike(Stretch a, Stretch b) {
    if (b == null || a.isStraight() || b.isStraight()) {
      return false;
    }
    double ratio = a.carrier().curvature() / b.carrier().curvature();
    return ratio > ALIKE && ratio * ALIKE < 1;
  }

  private double length(Stretch s) {
    return s == null ? Double.MAX_VALUE : course.at(s.from()).distanceTo(course.at(s.to()));
  }
}
