package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.bearingline.outline.Primitive;

/**
 * Brings the groups of a fitted chain that stray too far back within the tolerance, and leaves the
 * others as they are: a little less is asked of them, and at last they stand as they were drawn.
 */
final class Mending {

  /** Shares of the tolerance that are asked for, one after the other. */
  private static final double[] SHARES = {1, 0.7, 0.5, 0.35};

  private final Course course;
  private final double tolerance;
  private final double sharp;

  private List<Group> groups;

  /** How often each group was mended. */
  private List<Integer> times;

  /** Corners beside a mended group. */
  private final BitSet strict = new BitSet();

  private Mending(Course course, List<Group> groups, double tolerance, double sharpDegrees) {
    this.course = course;
    this.groups = groups;
    this.tolerance = tolerance;
    sharp = sharpDegrees;
    times = Collections.nCopies(groups.size(), 0);
  }

  /**
   * Mended groups and their pieces.
   *
   * @param pieces joined at the corners
   */
  record Mended(List<Group> groups, List<Primitive> pieces) {}

  /** The groups within the tolerance, apart from the rise of chords that stand for a curve. */
  static Mended of(Course course, List<Group> groups, double tolerance, double sharpDegrees) {
    Mending work = new Mending(course, groups, tolerance, sharpDegrees);
    List<List<Primitive>> pieces = Corners.ofEach(course, groups, tolerance, work.strict);
    BitSet astray = work.astray(pieces);
    while (!astray.isEmpty() && work.mend(astray)) {
      pieces = Corners.ofEach(course, work.groups, tolerance, work.strict);
      astray = work.astray(pieces);
    }
    return new Mended(work.groups, pieces.stream().flatMap(List::stream).toList());
  }

  private BitSet astray(List<List<Primitive>> pieces) {
    double[] moves =
        Moves.ofEach(course, pieces.stream().flatMap(List::stream).toList(), tolerance);
    BitSet astray = new BitSet();
    int at = 0;
    for (int i = 0; i < pieces.size(); i++) {
      int next = at + pieces.get(i).size();
      Group group = groups.get(i);
      double limit = tolerance + BentChords.rise(course, group.from(), group.to());
      astray.set(i, Arrays.stream(moves, at, next).anyMatch(move -> move > limit));
      at = next;
    }
    return astray;
  }

  // Whether anything was left to be mended.
  private boolean mend(BitSet astray) {
    List<Group> all = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    boolean any = false;
    for (int i = 0; i < groups.size(); i++) {
      Group group = groups.get(i);
      int done = times.get(i);
      if (!astray.get(i) || done > SHARES.length) {
        all.add(group);
        counts.add(done);
        continue;
      }
      any = true;
      strict.set(group.from());
      strict.set(group.to());
      strict.set(0, strict.get(0) || course.closed && group.to() == course.size - 1);
      List<Group> mended = mended(group, done);
      all.addAll(mended);
      counts.addAll(Collections.nCopies(mended.size(), done + 1));
    }
    groups = all;
    times = counts;
    return any;
  }

  // At first the same pieces, but for the corners beside them.
  private List<Group> mended(Group group, int done) {
    if (done == 0 && !group.ring()) {
      return List.of(group);
    }
    return done < SHARES.length
        ? ChainFit.between(course, group, SHARES[done] * tolerance, sharp)
        : DrawnGroups.between(course, group.from(), group.to(), 0.98 * tolerance);
  }
}
