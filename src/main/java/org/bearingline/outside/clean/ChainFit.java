package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Primitive;

/**
 * Makes few tangent lines and arcs of a course. From one corner to the next the longest straights
 * and circles are taken, then made tangent to each other all at once; where that asks for more than
 * the tolerance, shorter ones are.
 */
final class ChainFit {

  /** Share of the tolerance for free curves that stand as they were drawn. */
  static final double AS_DRAWN = 0.98;

  private final Fitting fitting;
  private final Course course;
  private final List<Group> groups = new ArrayList<>();

  private ChainFit(Fitting fitting) {
    this.fitting = fitting;
    course = fitting.course();
  }

  /**
   * A fitted chain.
   *
   * @param course the course, which may start at another sample than the one given
   * @param groups in order, from the first sample to the last
   */
  record Fitted(Course course, List<Group> groups) {

    int pieces() {
      return groups.stream().mapToInt(g -> g.pieces().size()).sum();
    }
  }

  static Fitted of(Course course, double tolerance, double sharpDegrees) {
    if (!course.closed) {
      return open(Fitting.of(course, tolerance, sharpDegrees));
    }
    for (int i = 0; i < course.size - 1; i++) {
      if (course.corner[i]) {
        return open(Fitting.of(course.from(i), tolerance, sharpDegrees));
      }
    }
    return RingFit.of(course, tolerance, sharpDegrees);
  }

  /**
   * The groups of a course from its first sample to its last, at both of which there is a corner.
   */
  static Fitted open(Fitting fitting) {
    ChainFit work = new ChainFit(fitting);
    for (int at = 0; at < work.course.size - 1; ) {
      int next = work.cornerAfter(at);
      work.between(at, next);
      at = next;
    }
    return new Fitted(fitting.course(), work.groups);
  }

  /** The groups of an open course that may have to start and end in given states. */
  static List<Group> between(Course course, double tolerance, double sharpDegrees, EndStates ends) {
    ChainFit work = new ChainFit(Fitting.of(course, tolerance, sharpDegrees));
    for (int at = 0; at < course.size - 1; ) {
      int next = work.cornerAfter(at);
      work.walk(
          at,
          next,
          new EndStates(
              at == 0 ? ends.start() : null, next == course.size - 1 ? ends.end() : null, false));
      at = next;
    }
    return work.groups;
  }

  /** The groups of the stretch of course that a group covers, asked for again. */
  static List<Group> between(Fitting fitting, Group group) {
    ChainFit work = new ChainFit(fitting);
    if (group.ring()) {
      work.walk(group.from(), group.to(), EndStates.RING);
    } else {
      work.between(group.from(), group.to());
    }
    return work.groups;
  }

  private int cornerAfter(int at) {
    int next = at + 1;
    while (next < course.size - 1 && !course.corner[next]) {
      next++;
    }
    return next;
  }

  private void walk(int from, int to, EndStates ends) {
    groups.addAll(WindowWalk.groups(fitting, from, to, ends));
  }

  // As it was drawn where that takes no more pieces than the fit.
  private void between(int from, int to) {
    Optional<AsDrawn.Pieces> drawn =
        AsDrawn.between(course, from, to, AS_DRAWN * fitting.tolerance());
    if (drawn.isPresent() && drawn.get().onlyPlain()) {
      groups.add(new Group(from, to, drawn.get().pieces(), false));
      return;
    }
    List<Group> fitted = WindowWalk.groups(fitting, from, to, EndStates.FREE);
    int least = fitted.size() > 1 ? Integer.MAX_VALUE : fitted.get(0).pieces().size();
    List<Primitive> exact = null;
    Optional<Anchored.Pieces> anchored =
        Anchored.between(course, from, to, fitting.tolerance(), fitting.sharpDegrees());
    if (anchored.isPresent() && anchored.get().isWorth(least)) {
      exact = anchored.get().pieces();
      least = exact.size();
    }
    if (drawn.isPresent() && drawn.get().pieces().size() <= least) {
      exact = drawn.get().pieces();
    }
    if (exact == null) {
      groups.addAll(fitted);
    } else {
      groups.add(new Group(from, to, exact, false));
    }
  }
}
