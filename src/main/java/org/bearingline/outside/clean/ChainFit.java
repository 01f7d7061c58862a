package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Makes few tangent lines and arcs of a course. From one corner to the next the longest straights
 * and circles are taken, then made tangent to each other all at once; where that asks for more than
 * the tolerance, shorter ones are.
 */
final class ChainFit {

  /** How many stretches are solved together. */
  private static final int WINDOW = 16;

  /** Shares of the tolerance for the stretches, one after the other. */
  private static final double[] SHARES = {0.95, 0.6, 0.35, 0.2, 0.1, 0.05};

  /** A finer cut with as many pieces is better where it lowers the spread to this share. */
  private static final double BETTER = 0.7;

  /** Share of the tolerance below which a spread is none. */
  private static final double EXACT = 1e-4;

  /** Share of its neighbours' length below which a stretch is tried to be left out. */
  private static final double CRUMB = 0.35;

  /** Ratio of curvatures from which two neighbours may be one. */
  private static final double ALIKE = 0.8;

  private final Course course;
  private final CarrierFit fit;
  private final Joints joints;
  private final double tolerance;
  private final double sharp;
  private final List<Group> groups = new ArrayList<>();

  private ChainFit(Course course, double tolerance, double sharpDegrees) {
    this.course = course;
    this.tolerance = tolerance;
    sharp = sharpDegrees;
    fit = new CarrierFit(course);
    joints = new Joints(course, sharpDegrees);
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
      ChainFit work = new ChainFit(course, tolerance, sharpDegrees);
      work.walk(false);
      return new Fitted(course, work.groups);
    }
    int seam = corner(course);
    if (seam >= 0) {
      Course turned = course.from(seam);
      ChainFit work = new ChainFit(turned, tolerance, sharpDegrees);
      work.walk(false);
      return new Fitted(turned, work.groups);
    }
    return ring(course, tolerance, sharpDegrees);
  }

  /**
   * The groups of an open course that may have to start and end in given states.
   *
   * @param start or null
   * @param end or null
   */
  static List<Group> between(
      Course course, double tolerance, double sharpDegrees, Window.State start, Window.State end) {
    ChainFit work = new ChainFit(course, tolerance, sharpDegrees);
    int from = 0;
    for (int i = 1; i < course.size; i++) {
      boolean last = i == course.size - 1;
      if (last || course.corner[i]) {
        work.walk(from, i, false, from == 0 ? start : null, last ? end : null);
        from = i;
      }
    }
    return work.groups;
  }

  /** The groups of the stretch of course that a group covers, asked for again. */
  static List<Group> between(Course course, Group group, double tolerance, double sharpDegrees) {
    ChainFit work = new ChainFit(course, tolerance, sharpDegrees);
    work.range(group.from(), group.to(), group.ring());
    return work.groups;
  }

  private static int corner(Course course) {
    for (int i = 0; i < course.size - 1; i++) {
      if (course.corner[i]) {
        return i;
      }
    }
    return -1;
  }

  private static Fitted ring(Course course, double tolerance, double sharpDegrees) {
    ChainFit first = new ChainFit(course, tolerance, sharpDegrees);
    int n = course.size - 1;
    Segmentation cut = new Segmentation(course, first.fit, SHARES[0] * tolerance);
    // The seam belongs where one stretch ends and another starts, best at a corner.
    Stretch head = cut.longest(0, n);
    Stretch round = head.to() == n ? head : cut.round();
    Group circle = round == null ? null : first.wholeCircle(round);
    if (circle != null) {
      return new Fitted(course, List.of(circle));
    }
    Optional<AsDrawn.Pieces> drawn = AsDrawn.ring(course, 0.98 * tolerance);
    Fitted asDrawn =
        drawn.map(d -> new Fitted(course, List.of(new Group(0, n, d.pieces(), true)))).orElse(null);
    if (drawn.isPresent() && drawn.get().onlyPlain()) {
      return asDrawn;
    }
    Fitted fitted = ring(course, head.to() % n, tolerance, sharpDegrees);
    int least = fitted.groups().size() > 1 ? Integer.MAX_VALUE : fitted.pieces();
    OptionalInt seam = Anchored.seam(course, tolerance);
    if (seam.isPresent()) {
      Course turned = course.from(seam.getAsInt());
      Optional<Anchored.Pieces> anchored = Anchored.ring(turned, tolerance, sharpDegrees);
      if (anchored.isPresent() && anchored.get().isWorth(least)) {
        fitted = new Fitted(turned, List.of(new Group(0, n, anchored.get().pieces(), true)));
        least = fitted.pieces();
      }
    }
    return asDrawn != null && drawn.get().pieces().size() <= least ? asDrawn : fitted;
  }

  private static Fitted ring(Course course, int seam, double tolerance, double sharpDegrees) {
    int n = course.size - 1;
    Course turned = course.from(seam);
    ChainFit work = new ChainFit(turned, tolerance, sharpDegrees);
    Segmentation turnedCut = new Segmentation(turned, work.fit, SHARES[0] * tolerance);
    Stretch whole = turnedCut.longest(0, n);
    if (whole.to() == n) {
      Group circle = work.wholeCircle(whole);
      if (circle != null) {
        return new Fitted(turned, List.of(circle));
      }
    }
    int corner = work.firstCorner(turnedCut);
    if (corner > 0 && corner < n) {
      turned = turned.from(corner);
      work = new ChainFit(turned, tolerance, sharpDegrees);
    }
    work.walk(corner < 0);
    return new Fitted(turned, work.groups);
  }

  // The first joint that is a corner; 0 where only the seam is one, −1 where there is none.
  private int firstCorner(Segmentation cut) {
    List<Stretch> all = cut.between(0, course.size - 1);
    for (int i = 0; i + 1 < all.size(); i++) {
      if (joints.isCorner(all.get(i), all.get(i + 1), tolerance)) {
        return all.get(i).to();
      }
    }
    Stretch last = all.get(all.size() - 1);
    return all.size() == 1 || seamIsCorner(last, all.get(0)) ? 0 : -1;
  }

  private boolean seamIsCorner(Stretch last, Stretch first) {
    return joints.isCorner(last, first, tolerance);
  }

  private Group wholeCircle(Stretch s) {
    double k = s.carrier().curvature();
    if (k == 0) {
      return null;
    }
    double round = 0;
    for (int i = s.from(); i < s.to(); i++) {
      double dx = course.x[i + 1] - course.x[i];
      double dy = course.y[i + 1] - course.y[i];
      double mx = (course.x[i] + course.x[i + 1]) / 2;
      double my = (course.y[i] + course.y[i + 1]) / 2;
      round += s.carrier().along(mx, my, dx, dy);
    }
    if (Math.abs(k) * round < Math.PI * 1.5) {
      return null;
    }
    Carrier c = s.carrier();
    Point center = new Point(c.x() - c.ty() / k, c.y() + c.tx() / k);
    double radius = 1 / Math.abs(k);
    if (s.drawn()) {
      Arc arc = (Arc) course.drawn[s.from()];
      center = arc.center();
      radius = arc.radius();
    }
    Point start = center.plus(new Point(radius, 0));
    Arc circle = new Arc(center, radius, start, start, k > 0 ? 360 : -360);
    return new Group(s.from(), s.to(), List.of(circle), true);
  }

  // From one corner of the drawing to the next, or once round.
  private void walk(boolean ring) {
    int from = 0;
    for (int i = 1; i < course.size; i++) {
      if (i == course.size - 1 || course.corner[i]) {
        range(from, i, ring);
        from = i;
      }
    }
  }

  private void range(int from, int to, boolean ring) {
    if (ring) {
      walk(from, to, true);
      return;
    }
    Optional<AsDrawn.Pieces> drawn = AsDrawn.between(course, from, to, 0.98 * tolerance);
    if (drawn.isPresent() && drawn.get().onlyPlain()) {
      groups.add(new Group(from, to, drawn.get().pieces(), false));
      return;
    }
    int before = groups.size();
    walk(from, to, false);
    List<Group> fitted = groups.subList(before, groups.size());
    int pieces = fitted.stream().mapToInt(g -> g.pieces().size()).sum();
    int least = fitted.size() > 1 ? Integer.MAX_VALUE : pieces;
    List<Primitive> exact = null;
    Optional<Anchored.Pieces> anchored = Anchored.between(course, from, to, tolerance, sharp);
    // What was drawn as a straight may cost a piece for each curve beside it.
    if (anchored.isPresent()
        && anchored.get().pieces().size() - anchored.get().windows() <= least) {
      exact = anchored.get().pieces();
      least = exact.size();
    }
    if (drawn.isPresent() && drawn.get().pieces().size() <= least) {
      exact = drawn.get().pieces();
    }
    if (exact != null) {
      fitted.clear();
      groups.add(new Group(from, to, exact, false));
    }
  }

  private void walk(int from, int end, boolean round) {
    walk(from, end, round, null, null);
  }

  private void walk(int from, int end, boolean closed, Window.State given, Window.State target) {
    boolean ring = closed;
    int at = from;
    Window.State start = given;
    Window.State seam = target;
    int groupFrom = from;
    List<Primitive> pieces = new ArrayList<>();
    while (at < end) {
      Window best = best(at, end, start, seam, ring);
      if (best == null) {
        // No smooth line: a corner here, and on from it.
        if (!pieces.isEmpty()) {
          groups.add(new Group(groupFrom, at, pieces, false));
          pieces = new ArrayList<>();
        }
        Stretch alone =
            new Segmentation(course, fit, SHARES[2] * tolerance).longest(at, open(at, end));
        groups.add(new Group(at, alone.to(), List.of(piece(alone)), false));
        at = alone.to();
        groupFrom = at;
        start = null;
        seam = ring ? null : seam;
        ring = false;
        continue;
      }
      boolean cut = best.to < end && isFull(best);
      boolean round = ring && at == 0 && best.to == end;
      if (!cut && !round) {
        best.trim(start == null, best.to < end || seam == null);
      }
      TangentChain chain = best.chain();
      List<Primitive> all = new ArrayList<>(chain.primitives(round));
      int kept = cut ? WINDOW / 2 : all.size();
      pieces.addAll(all.subList(0, kept));
      if (ring && at == 0 && cut) {
        seam = new Window.State(chain.x[0], chain.y[0], chain.heading[0]);
      }
      if (cut) {
        at = best.sample(kept);
        start = new Window.State(chain.x[kept], chain.y[kept], chain.heading[kept]);
        continue;
      }
      at = best.to;
      start = null;
      if (ring && at == end && seam != null && groupFrom == from) {
        int last = pieces.size() - 1;
        Point first = pieces.get(0).start();
        if (pieces.get(last).start().equals(first)) {
          pieces.remove(last);
        } else {
          pieces.set(last, pieces.get(last).withEnds(pieces.get(last).start(), first));
        }
      }
      groups.add(new Group(groupFrom, at, pieces, ring && at == end && groupFrom == 0));
      seam = ring ? null : seam;
      ring = false;
      pieces = new ArrayList<>();
      groupFrom = at;
    }
  }

  // Where a closed course starts with one stretch, that must not come back to its own start.
  private int open(int at, int end) {
    return at == 0 && course.closed ? Math.max(1, end / 2) : end;
  }

  private static boolean isFull(Window window) {
    return window.stretches.size() == WINDOW;
  }

  private Window best(int at, int end, Window.State start, Window.State seam, boolean ring) {
    Window best = null;
    for (double share : SHARES) {
      if (best != null && (isFull(best) || best.spread() < EXACT * tolerance)) {
        break;
      }
      List<Stretch> row = row(at, end, share * tolerance, ring);
      if (best != null && row.size() > best.stretches.size()) {
        break;
      }
      Window window = new Window(course, fit, tolerance, row);
      boolean last = window.to == end;
      boolean round = ring && last && at == 0;
      boolean solved = window.solve(start, last && !round ? seam : null, round);
      if (solved && best != null && window.to != best.to) {
        break;
      }
      if (solved && (best == null || window.spread() < BETTER * best.spread())) {
        best = window;
      }
    }
    return best == null
        ? null
        : withoutCrumbs(
            best,
            start,
            best.to == end && !(ring && at == 0) ? seam : null,
            ring && best.to == end && at == 0);
  }

  // A stretch much shorter than its neighbours is what the longest ones happened to leave over.
  private Window withoutCrumbs(
      Window window, Window.State start, Window.State target, boolean ring) {
    Window best = window;
    int i = 0;
    while (i < best.stretches.size()) {
      List<Stretch> fewer = without(best.stretches, i, start == null);
      Window shorter = fewer == null ? null : new Window(course, fit, tolerance, fewer);
      if (shorter != null && shorter.solve(start, target, ring)) {
        best = shorter;
      } else {
        i++;
      }
    }
    return best;
  }

  private List<Stretch> without(List<Stretch> all, int i, boolean firstToo) {
    int n = all.size();
    if (n < 2 || i == 0 && !firstToo || n == 2 && firstToo) {
      return null;
    }
    Stretch crumb = all.get(i);
    Stretch before = i > 0 ? all.get(i - 1) : null;
    Stretch after = i < n - 1 ? all.get(i + 1) : null;
    boolean betweenStraights =
        before != null && after != null && before.isStraight() && after.isStraight();
    double shorter =
        Math.min(
            before == null ? Double.MAX_VALUE : way(before),
            after == null ? Double.MAX_VALUE : way(after));
    boolean small = way(crumb) <= CRUMB * shorter;
    boolean alike = alike(crumb, before) || alike(crumb, after);
    // At the very start, what is drawn as an arc would have to reach back over it.
    boolean onlyDrawn = before == null && after != null && after.drawn();
    if (crumb.drawn() || betweenStraights || onlyDrawn || !small && !alike) {
      return null;
    }
    int half = (crumb.from() + crumb.to()) / 2;
    half = before == null || before.drawn() ? crumb.from() : half;
    half = after == null || after.drawn() && !before.drawn() ? crumb.to() : half;
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

  private static boolean alike(Stretch a, Stretch b) {
    if (b == null || a.isStraight() || b.isStraight()) {
      return false;
    }
    double ratio = a.carrier().curvature() / b.carrier().curvature();
    return ratio > ALIKE && ratio * ALIKE < 1;
  }

  private double way(Stretch s) {
    return course.at(s.from()).distanceTo(course.at(s.to()));
  }

  // The stretches up to the next corner, at most a window of them.
  private List<Stretch> row(int at, int end, double cutting, boolean ring) {
    Segmentation cut = new Segmentation(course, fit, cutting);
    List<Stretch> row = new ArrayList<>();
    int from = at;
    while (from < end && row.size() < WINDOW) {
      Stretch next = cut.longest(from, end);
      if (!row.isEmpty() && joints.isCorner(row.get(row.size() - 1), next, tolerance)) {
        break;
      }
      row.add(next);
      from = next.to();
    }
    return row;
  }

  private Primitive piece(Stretch s) {
    Point start = s.carrier().foot(course.x[s.from()], course.y[s.from()]);
    Point end = s.carrier().foot(course.x[s.to()], course.y[s.to()]);
    if (s.isStraight()) {
      return new Line(start, end);
    }
    double k = s.carrier().curvature();
    Point center =
        new Point(s.carrier().x() - s.carrier().ty() / k, s.carrier().y() + s.carrier().tx() / k);
    Arc arc = Arc.between(start, end, center, k > 0);
    double chord = course.at(s.from()).distanceTo(course.at(s.to()));
    // Of samples that stand still next to nothing is left, and no whole turn.
    return arc.length() > Math.PI * chord + tolerance && s.to() - s.from() < 8
        ? new Line(start, end)
        : arc;
  }
}
