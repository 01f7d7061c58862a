package org.bearingline.outline.topology;

import java.util.Arrays;

/** Where pieces are to be cut: points in a list per piece, handed out in the order of travel. */
public final class Cuts {

  private final Pieces pieces;
  private final int[] head;
  private int[] next = new int[64];
  private double[] along = new double[64];
  private double[] x = new double[64];
  private double[] y = new double[64];
  private int size;

  Cuts(Pieces pieces) {
    this.pieces = pieces;
    head = new int[pieces.size()];
    Arrays.fill(head, -1);
  }

  /** Adds a cut of piece {@code k} at a point on it, in its place along the piece. */
  void add(int k, double px, double py) {
    if (size == next.length) {
      int room = size * 2;
      next = Arrays.copyOf(next, room);
      along = Arrays.copyOf(along, room);
      x = Arrays.copyOf(x, room);
      y = Arrays.copyOf(y, room);
    }
    double a = along(k, px, py);
    int at = size++;
    along[at] = a;
    x[at] = px;
    y[at] = py;
    int before = -1;
    int after = head[k];
    while (after >= 0 && along[after] < a) {
      before = after;
      after = next[after];
    }
    next[at] = after;
    if (before < 0) {
      head[k] = at;
    } else {
      next[before] = at;
    }
  }

  // Grows along the piece; for arcs by the sum norm of the turned direction, which needs no angle.
  private double along(int k, double px, double py) {
    if (pieces.turn[k] == 0) {
      return (px - pieces.x0[k]) * (pieces.x1[k] - pieces.x0[k])
          + (py - pieces.y0[k]) * (pieces.y1[k] - pieces.y0[k]);
    }
    double ax = pieces.x0[k] - pieces.cx[k];
    double ay = pieces.y0[k] - pieces.cy[k];
    double vx = px - pieces.cx[k];
    double vy = py - pieces.cy[k];
    double c = ax * vx + ay * vy;
    double s = (ax * (py - pieces.y0[k]) - ay * (px - pieces.x0[k])) * pieces.turn[k];
    double norm = Math.abs(c) + Math.abs(s);
    if (c >= 0) {
      return s >= 0 ? s / norm : 4 + s / norm;
    }
    return 2 - s / norm;
  }

  /** How many cuts all pieces have together. */
  public int size() {
    return size;
  }

  /**
   * Adds the parts of piece {@code k} between its cuts to {@code out}, each with {@code from} as
   * its source. Parts shorter than {@code least} mm are left out.
   */
  public void parts(int k, double least, Pieces out, int from) {
    double sx = pieces.x0[k];
    double sy = pieces.y0[k];
    double ex = pieces.x1[k];
    double ey = pieces.y1[k];
    if (head[k] < 0) {
      out.addPart(pieces, k, sx, sy, ex, ey, pieces.full[k], from);
      return;
    }
    double limit = least * least;
    boolean moved = false;
    for (int at = head[k]; at >= 0; at = next[at]) {
      double dx = x[at] - sx;
      double dy = y[at] - sy;
      if (dx * dx + dy * dy > limit) {
        out.addPart(pieces, k, sx, sy, x[at], y[at], false, from);
        sx = x[at];
        sy = y[at];
        moved = true;
      }
    }
    double dx = ex - sx;
    double dy = ey - sy;
    if (dx * dx + dy * dy > limit) {
      out.addPart(pieces, k, sx, sy, ex, ey, false, from);
    } else if (!moved) {
      out.addPart(pieces, k, sx, sy, ex, ey, pieces.full[k], from);
    }
  }
}
