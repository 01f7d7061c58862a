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

  /** Where points lie off by themselves, to ask for less would only cut the line to pieces. */
  private static final double[] NOISY = {1};

  /** So many groups at once stray only where points lie off: then no other fit would serve. */
  private static final int MANY = 500;

  private final Course course;
  private final double tolerance;
  private final double sharp;
  private final double limit;
  private final double[] shares;

  /** Made when something is to be mended: most chains need none. */
  private Fitting fitting;

  private List<Group> groups;

  /** How often each group was mended. */
  private List<Integer> times;

  /** Corners beside a mended group. */
  private final BitSet strict = new BitSet();

  private Mending(
      Course course,
      List<Group> groups,
      double tolerance,
      double limit,
      double[] shares,
      double sharpDegrees) {
    this.course = course;
    this.groups = groups;
    this.tolerance = tolerance;
    this.limit = limit;
    this.shares = shares;
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
    return new Mending(course, groups, tolerance, tolerance, SHARES, sharpDegrees).mended();
  }

  /**
   * The groups of a line whose points lie off by themselves, where they have not lost their way.
   *
   * @param limit mm that single points may lie off
   */
  static Mended ofNoisy(
      Course course, List<Group> groups, double tolerance, double limit, double sharpDegrees) {
    return new Mending(course, groups, tolerance, limit, NOISY, sharpDegrees).mended();
  }

  private Mended mended() {
    List<List<Primitive>> pieces = Corners.ofEach(course, groups, tolerance, strict);
    BitSet astray = astray(pieces);
    while (!astray.isEmpty() && mend(astray)) {
      pieces = Corners.ofEach(course, groups, tolerance, strict);
      astray = astray(pieces);
    }
    return new Mended(groups, pieces.stream().flatMap(List::stream).toList());
  }

  private BitSet astray(List<List<Primitive>> pieces) {
    double[] moves = Moves.ofEach(course, pieces.stream().flatMap(List::stream).toList(), limit);
    BitSet astray = new BitSet();
    int at = 0;
    for (int i = 0; i < pieces.size(); i++) {
      int next = at + pieces.get(i).size();
      Group group = groups.get(i);
      double most = limit + BentChords.rise(course, group.from(), group.to());
      astray.set(i, Arrays.stream(moves, at, next).anyMatch(move -> move > most));
      at = next;
    }
    return astray;
  }

  // Whether anything was left to be mended.
  private boolean mend(BitSet astray) {
    List<Group> all = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    fitting = fitting == null ? Fitting.of(course, tolerance, sharp) : fitting;
    boolean any = false;
    boolean many = astray.cardinality() > MANY;
    for (int i = 0; i < groups.size(); i++) {
      Group group = groups.get(i);
      int done = many ? Math.max(times.get(i), shares.length) : times.get(i);
      if (!astray.get(i) || done > shares.length) {
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
    return done < shares.length
        ? ChainFit.between(fitting.asking(shares[done] * tolerance), group)
        : DrawnGroups.between(course, group.from(), group.to(), ChainFit.AS_DRAWN * tolerance);
  }
}
