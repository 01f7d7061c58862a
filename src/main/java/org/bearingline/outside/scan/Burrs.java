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
  private static final double DETOUR = 1.5;

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
    for (int i = 0; i < loop.size(); ) {
      kept.add(loop.point(i));
      int after = endOfBurr(near, i);
      if (after > i) {
        found++;
        i = after;
      } else {
        i++;
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

  /** The point at which the edge goes on past a burr that begins at a point; that point if none. */
  private int endOfBurr(Neighbours near, int from) {
    int best = from;
    for (int to : near.of(from)) {
      if (to > best && isBurr(from, to)) {
        best = to;
      }
    }
    return best;
  }

  private boolean isBurr(int from, int to) {
    double foot = loop.point(from).distanceTo(loop.point(to));
    double way = lengths[to] - lengths[from];
    if (foot > widest || way < DETOUR * foot + 2 || way > lengths[loop.size()] / 2) {
      return false;
    }
    return goesOn(from, to) && Math.abs(area(from, to)) <= widest * way / 2;
  }

  private boolean goesOn(int from, int to) {
    Point foot = loop.point(to).minus(loop.point(from));
    Point before = loop.point(from).minus(loop.point(from - reach));
    Point after = loop.point(to + reach).minus(loop.point(to));
    return turn(before, foot) < MOST_TURN
        && turn(foot, after) < MOST_TURN
        && turn(before, after) < MOST_TURN;
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
