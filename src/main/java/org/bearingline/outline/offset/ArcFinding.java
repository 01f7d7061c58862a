package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Finds lines and arcs again in a ring of corners, each run as long as the tolerance allows. */
final class ArcFinding {

  /** Longest run looked at; enough for a half circle of fine chords. */
  private static final int LONGEST = 400;

  private ArcFinding() {}

  /** The loop through some of the corners, all others within {@code tolerance} mm of it. */
  static Loop loop(List<Point> corners, double tolerance) {
    int n = corners.size();
    List<Primitive> out = new ArrayList<>();
    int at = 0;
    while (at < n) {
      Primitive best = new Line(corners.get(at), corners.get((at + 1) % n));
      int reached = at + 1;
      for (int end = at + 2; end <= Math.min(n - (at == 0 ? 1 : 0), at + LONGEST); end++) {
        Primitive longer = through(corners, at, end, tolerance);
        if (longer == null) {
          break;
        }
        best = longer;
        reached = end;
      }
      out.add(best);
      at = reached;
    }
    return new Loop(out);
  }

  private static Primitive through(List<Point> corners, int from, int to, double tolerance) {
    int n = corners.size();
    Point a = corners.get(from);
    Point b = corners.get((from + to) / 2);
    Point c = corners.get(to % n);
    if (a.equals(c)) {
      return null;
    }
    Point chord = c.minus(a);
    double half = chord.norm() / 2;
    double height = chord.cross(b.minus(a)) / (2 * half);
    Primitive piece;
    if (Math.abs(height) <= tolerance / 4) {
      piece = new Line(a, c);
    } else {
      double along = b.minus(a).dot(chord) / (2 * half) - half;
      // Height of the arc's own middle above the chord, from any third point on it.
      double offset = (along * along + height * height - half * half) / (2 * height);
      double radius = Math.hypot(half, offset);
      double bulge = -Math.signum(height) * (radius - Math.abs(offset)) / half;
      if (offset * height > 0) {
        bulge = -Math.signum(height) * (radius + Math.abs(offset)) / half;
      }
      if (Math.abs(bulge) > 1) {
        return null;
      }
      piece = Arc.ofBulge(a, c, bulge);
    }
    for (int i = from + 1; i <= to; i++) {
      Point here = corners.get(i % n);
      if (piece.distanceTo(here) > tolerance
          || piece.distanceTo(here.towards(corners.get(i - 1), 0.5)) > 2 * tolerance) {
        return null;
      }
    }
    return piece;
  }
}
