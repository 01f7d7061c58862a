package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Drops pieces shorter than the tolerance at a corner, such as the rounding of a drawing's figures
 * leaves where its pieces run past each other: the neighbours meet in one point instead.
 */
final class Crumbs {

  private final List<Primitive> pieces;
  private final double tolerance;
  private final double sharp;

  private Crumbs(List<Primitive> pieces, double tolerance, double sharpDegrees) {
    this.pieces = new ArrayList<>(pieces);
    this.tolerance = tolerance;
    sharp = Math.sin(Math.toRadians(sharpDegrees));
  }

  /** The pieces of a closed chain without. */
  static List<Primitive> without(List<Primitive> pieces, double tolerance, double sharpDegrees) {
    Crumbs work = new Crumbs(pieces, tolerance, sharpDegrees);
    List<Primitive> kept = new ArrayList<>();
    boolean any = false;
    for (int i = 0; i < pieces.size() && pieces.size() > 4; i++) {
      any |= work.drop(i);
    }
    for (Primitive piece : work.pieces) {
      if (piece != null) {
        kept.add(piece);
      }
    }
    return any ? kept : pieces;
  }

  private boolean drop(int i) {
    Primitive crumb = pieces.get(i);
    if (crumb.length() > tolerance) {
      return false;
    }
    int n = pieces.size();
    int before = (i + n - 1) % n;
    int after = (i + 1) % n;
    Primitive a = pieces.get(before);
    Primitive b = pieces.get(after);
    if (a == null || b == null || !isSharp(a, crumb) && !isSharp(crumb, b)) {
      return false;
    }
    Point met = Corners.meeting(Carrier.of(a), Carrier.of(b), crumb.middle());
    if (met == null
        || met.distanceTo(crumb.start()) > tolerance
        || met.distanceTo(crumb.end()) > tolerance
        || Math.min(a.length(), b.length()) < 4 * tolerance) {
      return false;
    }
    pieces.set(before, Corners.ending(a, met));
    pieces.set(after, Corners.ending(b.reversed(), met).reversed());
    pieces.set(i, null);
    return true;
  }

  private boolean isSharp(Primitive in, Primitive out) {
    Point u = in.tangentAt(1);
    Point v = out.tangentAt(0);
    return u.dot(v) < 0 || Math.abs(u.cross(v)) > sharp;
  }
}
