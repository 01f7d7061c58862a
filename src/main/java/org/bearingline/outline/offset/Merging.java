package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Pieces;

/** Makes one piece of neighbours on one line or one circle, so that no needless end is left. */
final class Merging {

  private final LoopSet in;
  private final Pieces p;
  private final double tolerance;
  private final LoopSet out;

  private Merging(LoopSet in, double tolerance) {
    this.in = in;
    this.p = in.pieces;
    this.tolerance = tolerance;
    this.out = new LoopSet(p.size());
  }

  static LoopSet of(LoopSet in, double tolerance) {
    Merging merging = new Merging(in, tolerance);
    for (int loop = 0; loop < in.loops(); loop++) {
      merging.merge(in.start(loop), in.end(loop));
    }
    return merging.out;
  }

  private void merge(int start, int end) {
    int n = end - start;
    int seam = -1;
    for (int i = 0; i < n && seam < 0; i++) {
      if (!oneCourse(start + i, start + (i + 1) % n)) {
        seam = (i + 1) % n;
      }
    }
    int first = out.pieces.size();
    if (seam < 0) {
      out.pieces.addPart(
          p, start, p.x0[start], p.y0[start], p.x0[start], p.y0[start], true, p.source[start]);
      out.close(first);
      return;
    }
    int i = 0;
    while (i < n) {
      int head = start + (seam + i) % n;
      int tail = head;
      i++;
      while (i < n && oneCourse(tail, start + (seam + i) % n)) {
        tail = start + (seam + i) % n;
        i++;
      }
      out.pieces.addPart(
          p, head, p.x0[head], p.y0[head], p.x1[tail], p.y1[tail], p.full[head], p.source[head]);
    }
    out.close(first);
  }

  private boolean oneCourse(int a, int b) {
    if (p.turn[a] != p.turn[b] || a == b || p.full[a] || p.full[b]) {
      return p.full[a] && a == b;
    }
    boolean oneOrigin = p.source[a] == p.source[b];
    if (p.turn[a] != 0) {
      double slack = oneOrigin ? tolerance : tolerance / 64;
      return Math.hypot(p.cx[a] - p.cx[b], p.cy[a] - p.cy[b]) + Math.abs(p.r[a] - p.r[b]) <= slack;
    }
    double ax = p.x1[a] - p.x0[a];
    double ay = p.y1[a] - p.y0[a];
    double bx = p.x1[b] - p.x0[b];
    double by = p.y1[b] - p.y0[b];
    if (ax * bx + ay * by <= 0) {
      return false;
    }
    // Of one line there is one moved line. Others must agree to rounding even at the far end of the
    // longer: a short piece alone bends by nothing and would join any two.
    double shorter = Math.sqrt(Math.min(ax * ax + ay * ay, bx * bx + by * by));
    return oneOrigin || Math.abs(ax * by - ay * bx) <= tolerance / 64 * shorter;
  }
}
