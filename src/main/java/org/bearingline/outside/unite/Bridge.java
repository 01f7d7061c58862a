package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.Meetings.Edge;

/**
 * Fills the gap between two straights, or two arcs, that lie against each other: the strip between
 * them as far as both run and are apart.
 */
final class Bridge {

  /** Cosine of how far two edges may run apart: 10°. */
  private static final double ALONG = -0.985;

  /** A strip at least so many times longer than it may be wide. */
  private static final double LONG = 4;

  /** mm: less is no gap. */
  private static final double MET = 1e-11;

  /** How far, in times the gap, a corner may move for its neighbour to run on straight. */
  private static final double RUN_ON = 3;

  /** Sine from which a neighbour leaves a corner and does not run on: 10°. */
  private static final double CORNER = 0.17;

  private final Edge a;
  private final Edge b;
  private final double near;

  private Bridge(Edge a, Edge b, double near) {
    this.a = a;
    this.b = b;
    this.near = near;
  }

  /** The strip between two edges, none where they do not lie against each other. */
  static List<Loop> between(Edge a, Edge b, double near) {
    Primitive one = a.primitive();
    Primitive other = b.primitive();
    if (one instanceof Line && other instanceof Line) {
      return new Bridge(a, b, near).strip(one, other);
    }
    if (!(one instanceof Arc first) || !(other instanceof Arc second)) {
      return List.of();
    }
    if (first.isFullCircle() && second.isFullCircle()) {
      return ring(first, second, near);
    }
    Bridge work = new Bridge(a, b, near);
    if (first.isFullCircle()) {
      return work.strip(opened(first, second), second);
    }
    return work.strip(first, second.isFullCircle() ? opened(second, first) : second);
  }

  // A circle cut open where the arc is farthest.
  private static Arc opened(Arc circle, Arc arc) {
    double opposite = arc.middle().minus(circle.center()).degrees() + 180;
    return Arc.around(circle.center(), circle.radius(), opposite, circle.sweep());
  }

  // A disc in a hole.
  private static List<Loop> ring(Arc a, Arc b, double near) {
    double apart = a.center().distanceTo(b.center());
    double gap = apart + Math.abs(a.radius() - b.radius());
    if (a.sweep() * b.sweep() > 0 || gap > near || gap <= MET) {
      return List.of();
    }
    return List.of(Loop.of(a.reversed()), Loop.of(b.reversed()));
  }

  private List<Loop> strip(Primitive one, Primitive other) {
    double from = one.nearestShare(other.end());
    double to = one.nearestShare(other.start());
    if (!((to - from) * one.length() >= LONG * near)) {
      return List.of();
    }
    Point low = one.pointAt(from);
    Point high = one.pointAt(to);
    double otherFrom = other.nearestShare(high);
    double otherTo = other.nearestShare(low);
    if (!(otherTo > otherFrom)) {
      return List.of();
    }
    double widest = 0;
    boolean overlap = false;
    for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
      double at = from + share * (to - from);
      double foot = other.nearestShare(one.pointAt(at));
      Point across = other.pointAt(foot).minus(one.pointAt(at));
      widest = Math.max(widest, across.norm());
      overlap |= one.tangentAt(at).cross(across) > 0;
      if (one.tangentAt(at).dot(other.tangentAt(foot)) > ALONG) {
        return List.of();
      }
    }
    if (widest > near || widest <= MET) {
      return List.of();
    }
    Primitive onOne = one.part(from, to).reversed();
    Primitive onOther = other.part(otherFrom, otherTo).reversed();
    if (one instanceof Line line && other instanceof Line opposite) {
      return straight(line, opposite, onOne, onOther);
    }
    if (overlap) {
      return List.of();
    }
    List<Primitive> round = new ArrayList<>();
    round.add(onOne);
    step(round, onOne.end(), onOther.start());
    round.add(onOther);
    step(round, onOther.end(), onOne.start());
    return List.of(new Loop(round));
  }

  // Where a neighbour leaves the strip's end askew, it runs on as far as the other straight.
  private List<Loop> straight(Line one, Line other, Primitive onOne, Primitive onOther) {
    Point oneHigh = onOne.start();
    Point oneLow = onOne.end();
    Point otherLow = onOther.start();
    Point otherHigh = onOther.end();
    boolean lowOver = one.tangentAt(0).cross(otherLow.minus(oneLow)) > 0;
    boolean highOver = one.tangentAt(0).cross(otherHigh.minus(oneHigh)) > 0;
    double lowGap = lowOver ? 0 : oneLow.distanceTo(otherLow);
    double highGap = highOver ? 0 : oneHigh.distanceTo(otherHigh);
    if (Math.max(lowGap, highGap) <= MET) {
      return List.of();
    }
    if (lowOver || highOver) {
      Point met = crossing(one, other);
      oneLow = lowOver ? met : oneLow;
      otherLow = lowOver ? met : otherLow;
      oneHigh = highOver ? met : oneHigh;
      otherHigh = highOver ? met : otherHigh;
    }
    if (lowOver) {
      // From where they cross, nothing is between them.
    } else if (oneLow.equals(one.start())) {
      otherLow = runOn(a.before(), oneLow, other, otherLow);
    } else {
      oneLow = runOn(b.after(), otherLow, one, oneLow);
    }
    if (highOver) {
      // Likewise.
    } else if (oneHigh.equals(one.end())) {
      otherHigh = runOn(a.after(), oneHigh, other, otherHigh);
    } else {
      oneHigh = runOn(b.before(), otherHigh, one, oneHigh);
    }
    List<Primitive> round = new ArrayList<>();
    step(round, oneHigh, oneLow);
    step(round, oneLow, otherLow);
    step(round, otherLow, otherHigh);
    step(round, otherHigh, oneHigh);
    return List.of(new Loop(round));
  }

  private static Point crossing(Line one, Line other) {
    Point course = one.tangentAt(0);
    return one.start().plus(course.times(way(one.start(), course, other)));
  }

  // How far it is from a place on a course to the straight that a line lies on.
  private static double way(Point from, Point course, Line to) {
    Point along = to.tangentAt(0);
    return to.start().minus(from).cross(along) / course.cross(along);
  }

  private Point runOn(Primitive neighbour, Point corner, Line target, Point foot) {
    Point along = target.tangentAt(0);
    if (!(neighbour instanceof Line line) || Math.abs(line.tangentAt(0).cross(along)) < CORNER) {
      return foot;
    }
    Point course = line.tangentAt(0);
    double way = way(corner, course, target);
    Point met = corner.plus(course.times(way));
    boolean isOn = target.distanceTo(met) <= MET * (1 + target.length());
    return isOn && Math.abs(way) <= RUN_ON * near ? met : foot;
  }

  private static void step(List<Primitive> round, Point from, Point to) {
    if (!from.equals(to)) {
      round.add(new Line(from, to));
    }
  }
}
