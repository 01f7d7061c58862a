package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Pieces;

/**
 * Every piece that can be part of a dilation's edge: each piece of the outline moved to its right
 * by the distance (lines parallel, arcs concentric), and a true arc about each outer corner. Inner
 * corners need no joining: their pieces cross. An arc that bends tighter than the distance has
 * nothing on the edge, each of its moved points being nearer to another point of the arc.
 */
final class RawOffset {

  private final LoopSet in;
  private final double distance;
  private final double tolerance;
  private final Pieces out;
  private final double[] before = new double[2];
  private final double[] after = new double[2];

  private RawOffset(LoopSet in, double distance, double tolerance) {
    this.in = in;
    this.distance = distance;
    this.tolerance = tolerance;
    this.out = new Pieces(2 * in.pieces.size());
  }

  /** The pieces, each with the number of the input piece it came from (for a corner: before). */
  static Pieces of(LoopSet in, double distance, double tolerance) {
    RawOffset raw = new RawOffset(in, distance, tolerance);
    for (int loop = 0; loop < in.loops(); loop++) {
      int last = in.end(loop) - 1;
      for (int k = in.start(loop); k <= last; k++) {
        raw.move(k);
        raw.corner(k, k == last ? in.start(loop) : k + 1);
      }
    }
    return raw.out;
  }

  private void move(int k) {
    Pieces p = in.pieces;
    if (p.turn[k] == 0) {
      p.tangent(k, false, before);
      double nx = before[1] * distance;
      double ny = -before[0] * distance;
      out.addLine(p.x0[k] + nx, p.y0[k] + ny, p.x1[k] + nx, p.y1[k] + ny, k);
      return;
    }
    double radius = p.r[k] + p.turn[k] * distance;
    if (radius <= tolerance) {
      return;
    }
    // Along the radius by the distance, from the ends: a far centre would cost digits.
    p.tangent(k, false, before);
    double sx = p.x0[k] + before[1] * distance;
    double sy = p.y0[k] - before[0] * distance;
    p.tangent(k, true, after);
    double ex = p.full[k] ? sx : p.x1[k] + after[1] * distance;
    double ey = p.full[k] ? sy : p.y1[k] - after[0] * distance;
    if (!p.full[k] && Math.hypot(ex - sx, ey - sy) <= tolerance && p.length(k) < p.r[k]) {
      return;
    }
    int at = out.addArc(sx, sy, ex, ey, p.cx[k], p.cy[k], radius, p.turn[k], p.full[k], k);
    double toX = p.anchorX[k] - p.cx[k];
    double toY = p.anchorY[k] - p.cy[k];
    double step = p.turn[k] * distance / Math.sqrt(toX * toX + toY * toY);
    out.anchorX[at] = p.anchorX[k] + step * toX;
    out.anchorY[at] = p.anchorY[k] + step * toY;
  }

  private void corner(int k, int next) {
    Pieces p = in.pieces;
    p.tangent(k, true, before);
    p.tangent(next, false, after);
    double cross = before[0] * after[1] - before[1] * after[0];
    double dot = before[0] * after[0] + before[1] * after[1];
    // Twice the turn is room enough: a smaller gap is closed in stitching.
    if (Math.abs(cross) * distance <= tolerance) {
      if (dot > 0 || p.curvature(next) >= -p.curvature(k)) {
        return;
      }
    } else if (cross < 0) {
      return;
    }
    double vx = p.x1[k];
    double vy = p.y1[k];
    out.addArc(
        vx + before[1] * distance,
        vy - before[0] * distance,
        vx + after[1] * distance,
        vy - after[0] * distance,
        vx,
        vy,
        distance,
        1,
        false,
        k);
  }
}
