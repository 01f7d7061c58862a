package org.bearingline.routing;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;

/** Tells whether an edge that was run on crosses the part or itself. */
final class ClearRun {

  /** Meetings nearer than this to an end of the straight, in mm, are joints and not crossings. */
  private static final double JOINT = 1e-6;

  private ClearRun() {}

  static boolean isClear(ExtendedEdge extended, Contour contour) {
    List<Primitive> edge = extended.loop().primitives();
    for (int i = 0; i < edge.size(); i++) {
      if (extended.stretches().get(i) == Stretch.ROUTED) {
        continue;
      }
      Line added = (Line) edge.get(i);
      Bounds box = added.bounds();
      for (int j = 0; j < edge.size(); j++) {
        if (j != i && edge.get(j).bounds().intersects(box) && crosses(added, edge.get(j))) {
          return false;
        }
      }
      for (Primitive piece : contour.loop().primitives()) {
        if (piece.bounds().intersects(box) && crosses(added, piece)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean crosses(Line line, Primitive piece) {
    return piece.match(other -> crossesLine(line, other), arc -> crossesArc(line, arc));
  }

  private static boolean crossesLine(Line a, Line b) {
    Point u = a.end().minus(a.start());
    Point v = b.end().minus(b.start());
    double turn = u.cross(v);
    if (Math.abs(turn) <= 1e-12 * u.norm() * v.norm()) {
      return false;
    }
    Point gap = b.start().minus(a.start());
    double s = gap.cross(v) / turn * u.norm();
    double t = gap.cross(u) / turn * v.norm();
    return s > JOINT && s < u.norm() - JOINT && t > JOINT && t < v.norm() - JOINT;
  }

  private static boolean crossesArc(Line line, Arc arc) {
    Point u = line.end().minus(line.start()).unit();
    Point toCentre = arc.center().minus(line.start());
    double along = toCentre.dot(u);
    double off = toCentre.cross(u);
    double half2 = arc.radius() * arc.radius() - off * off;
    // A straight that only touches runs on from the arc.
    if (half2 <= JOINT * arc.radius()) {
      return false;
    }
    double half = Math.sqrt(half2);
    return isInside(line, arc, u, along - half) || isInside(line, arc, u, along + half);
  }

  private static boolean isInside(Line line, Arc arc, Point u, double s) {
    if (s <= JOINT || s >= line.length() - JOINT) {
      return false;
    }
    Point p = line.start().plus(u.times(s));
    return p.distanceTo(arc.start()) > JOINT
        && p.distanceTo(arc.end()) > JOINT
        && arc.covers(Degrees.of(p.minus(arc.center())));
  }
}
