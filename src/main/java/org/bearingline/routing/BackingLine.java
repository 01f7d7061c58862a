package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The plate's corners behind a run of sawn edges: each edge moved out by its own distance, hollows
 * filled straight across, neighbours met in a corner or, where that would be a long spike, blunt.
 */
final class BackingLine {

  /** A corner farther out than this many times the margin is blunted. */
  private static final double LONGEST_SPIKE = 3;

  /** Sine below which neighbours count as parallel and are joined by a step. */
  private static final double PARALLEL = 1e-3;

  /** Pieces that stand for a sawn arc. */
  private static final int ARC_PIECES = 8;

  private BackingLine() {}

  static void corners(
      List<Primitive> sawn,
      SawnChain.Entry leaving,
      SawnChain.Entry entering,
      double margin,
      List<Point> corners) {
    List<Point> chain = withoutHollows(points(sawn), leaving.sine() > 0, entering.sine() > 0);
    int edges = chain.size() - 1;
    for (int i = 1; i < edges; i++) {
      double before = i == 1 ? depth(leaving.step(), chain.get(0), chain.get(1)) : margin;
      double after =
          i == edges - 1 ? depth(entering.step(), chain.get(i), chain.get(i + 1)) : margin;
      meet(chain.get(i - 1), chain.get(i), chain.get(i + 1), before, after, corners);
    }
  }

  /** How far a step from the edge's line leads to its right, out of the wood. */
  private static double depth(Point step, Point from, Point to) {
    return to.minus(from).unit().left().times(-1).dot(step);
  }

  private static List<Point> points(List<Primitive> sawn) {
    List<Point> points = new ArrayList<>();
    points.add(sawn.get(0).start());
    for (Primitive piece : sawn) {
      int pieces = piece.curvature() == 0 ? 1 : ARC_PIECES;
      for (int i = 1; i <= pieces; i++) {
        points.add(piece.pointAt((double) i / pieces));
      }
    }
    return points;
  }

  /** Drops corners that turn towards the wood; an end that carries the follower keeps its edge. */
  private static List<Point> withoutHollows(
      List<Point> points, boolean freeStart, boolean freeEnd) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point next = points.get(i);
      int fixed = freeStart ? 1 : 2;
      boolean held = !freeEnd && i == points.size() - 1;
      while (!held && kept.size() > fixed && isHollow(kept, next)) {
        kept.remove(kept.size() - 1);
      }
      kept.add(next);
    }
    return kept;
  }

  private static boolean isHollow(List<Point> kept, Point next) {
    Point last = kept.get(kept.size() - 1);
    Point before = kept.get(kept.size() - 2);
    return last.minus(before).cross(next.minus(last)) < 0;
  }

  private static void meet(
      Point from, Point at, Point to, double before, double after, List<Point> corners) {
    Point u = at.minus(from).unit();
    Point v = to.minus(at).unit();
    Point p = at.minus(u.left().times(before));
    Point q = at.minus(v.left().times(after));
    double sine = u.cross(v);
    if (Math.abs(sine) > PARALLEL) {
      // Both moved lines pass through p + s u and q + t v.
      double s = q.minus(p).cross(v) / sine;
      Point corner = p.plus(u.times(s));
      if (corner.distanceTo(at) <= LONGEST_SPIKE * Math.max(before, after)) {
        corners.add(corner);
        return;
      }
    }
    corners.add(p);
    corners.add(q);
  }
}
