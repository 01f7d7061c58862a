package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * Cuts off what sticks to an edge and is too narrow to be wood: hairs, pencil lines that run from
 * the template out over the paper, dust, and the narrow nicks that light dust makes. Such a thing
 * leaves the edge and comes back to it at a narrow foot, is thin from there to its tip, and the
 * edge goes straight on past it.
 */
final class Burrs {

  /** A way round this much longer than the foot is no waver of the edge. */
  private static final double DETOUR = 1.3;

  /** Degrees by which the edge before and after may turn from the foot. */
  private static final double MOST_TURN = 20;

  private final TracedLoop loop;
  private final double widest;
  private final int reach;
  private final double[] lengths;
  private int found;

  private Burrs(TracedLoop loop, double widest) {
    this.loop = loop;
    this.widest = widest;
    this.reach = (int) Math.ceil(widest);
    this.lengths = new double[loop.size() + 1];
    for (int i = 0; i < loop.size(); i++) {
      lengths[i + 1] = lengths[i] + loop.point(i).distanceTo(loop.point(i + 1));
    }
  }

  /**
   * @param loop the edge without them
   * @param count how many were cut off
   */
  record Cut(TracedLoop loop, int count) {}

  /**
   * Cuts them off a loop.
   *
   * @param widest pixels of a foot
   */
  static Cut off(TracedLoop loop, double widest) {
    if (loop.size() < 8 * widest || widest < 3) {
      return new Cut(loop, 0);
    }
    Burrs burrs = new Burrs(begunStraight(loop, (int) Math.ceil(widest)), widest);
    TracedLoop cut = burrs.cut();
    return burrs.found == 0 ? new Cut(loop, 0) : new Cut(cut, burrs.found);
  }

  private TracedLoop cut() {
    Neighbours near = new Neighbours(loop, widest);
    List<Point> kept = new ArrayList<>();
    Foot next = firstFrom(near, 0);
    for (int i = 0; i < loop.size(); i++) {
      kept.add(loop.point(i));
      if (next != null && i == next.from) {
        found++;
        i = next.to - 1;
        next = firstFrom(near, next.to);
      }
    }
    return new TracedLoop(
        kept.stream().mapToDouble(Point::x).toArray(),
        kept.stream().mapToDouble(Point::y).toArray(),
        loop.atRim(),
        loop.atMark());
  }

  /** The same loop begun where it is straightest, so that no burr lies across its seam. */
  private static TracedLoop begunStraight(TracedLoop loop, int reach) {
    int straightest = 0;
    double longest = 0;
    for (int i = 0; i < loop.size(); i++) {
      double across = loop.point(i - 2 * reach).distanceTo(loop.point(i + 2 * reach));
      if (across > longest) {
        longest = across;
        straightest = i;
      }
    }
    double[] xs = new double[loop.size()];
    double[] ys = new double[loop.size()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = loop.point(straightest + i).x();
      ys[i] = loop.point(straightest + i).y();
    }
    return new TracedLoop(xs, ys, loop.atRim(), loop.atMark());
  }

  /** Where a burr begins and ends, and degrees by which the edge turns there. */
  private record Foot(int from, int to, double turn) {}

  /** The first burr from a point on; of the ways to cut it off the one most in line; or none. */
  private Foot firstFrom(Neighbours near, int start) {
    for (int i = start; i < loop.size(); i++) {
      Foot foot = best(near, i);
      if (foot != null) {
        for (int j = i + 1; j < Math.min(loop.size(), i + 2 * reach); j++) {
          Foot other = best(near, j);
          foot = other != null && other.turn < foot.turn ? other : foot;
        }
        return foot;
      }
    }
    return null;
  }

  private Foot best(Neighbours near, int from) {
    Foot best = null;
    for (int to : near.of(from)) {
      if (to > from) {
        double turn = turnAtBurr(from, to);
        if (turn < MOST_TURN && (best == null || turn < best.turn)) {
          best = new Foot(from, to, turn);
        }
      }
    }
    return best;
  }

  /** Degrees by which the edge turns at a burr between two points; 180 where there is none. */
  private double turnAtBurr(int from, int to) {
    double foot = loop.point(from).distanceTo(loop.point(to));
    double way = lengths[to] - lengths[from];
    if (foot > widest || way < DETOUR * foot + 1 || way > lengths[loop.size()] / 2) {
      return 180;
    }
    Point across = loop.point(to).minus(loop.point(from));
    Point before = loop.point(from).minus(loop.point(from - reach));
    Point after = loop.point(to + reach).minus(loop.point(to));
    double turn =
        Math.max(turn(before, after), Math.max(turn(before, across), turn(across, after)));
    return turn < MOST_TURN && Math.abs(area(from, to)) <= widest * way / 2 ? turn : 180;
  }

  private static double turn(Point one, Point other) {
    return Math.toDegrees(Math.abs(Math.atan2(one.cross(other), one.dot(other))));
  }

  /** Pixels² between the way out and back and the foot. */
  private double area(int from, int to) {
    double twice = 0;
    Point origin = loop.point(from);
    for (int i = from; i < to; i++) {
      twice += loop.point(i).minus(origin).cross(loop.point(i + 1).minus(origin));
    }
    return twice / 2;
  }
}
