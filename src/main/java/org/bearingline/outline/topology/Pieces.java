package org.bearingline.outline.topology;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Directed lines and arcs in flat arrays: the working form of the kernel, where thousands of pieces
 * are cut and weighed. Values ({@link Primitive}) stand at its borders only. Not safe for use by
 * several threads.
 *
 * <p>An arc is a line's two ends with a centre, a radius and a turn: +1 counter-clockwise, −1
 * clockwise; 0 marks a line. Ends of a whole circle are equal. A part of an arc keeps the anchor of
 * the whole, a point that lies on the circle where the part's own ends may miss it by a tolerance.
 */
public final class Pieces extends PieceArrays {

  public Pieces(int capacity) {
    super(capacity);
  }

  public int addLine(double sx, double sy, double ex, double ey, int from) {
    int k = next();
    x0[k] = sx;
    y0[k] = sy;
    x1[k] = ex;
    y1[k] = ey;
    turn[k] = 0;
    full[k] = false;
    source[k] = from;
    return k;
  }

  /** Adds an arc whose start becomes its anchor. */
  public int addArc(
      double sx,
      double sy,
      double ex,
      double ey,
      double centerX,
      double centerY,
      double radius,
      int sense,
      boolean whole,
      int from) {
    int k = addLine(sx, sy, ex, ey, from);
    cx[k] = centerX;
    cy[k] = centerY;
    r[k] = radius;
    anchorX[k] = sx;
    anchorY[k] = sy;
    turn[k] = (byte) sense;
    full[k] = whole;
    return k;
  }

  /** A copy of piece {@code k} of {@code other} between two points on it. */
  public int addPart(
      Pieces other, int k, double sx, double sy, double ex, double ey, boolean whole, int from) {
    if (other.turn[k] == 0) {
      return addLine(sx, sy, ex, ey, from);
    }
    int at =
        addArc(sx, sy, ex, ey, other.cx[k], other.cy[k], other.r[k], other.turn[k], whole, from);
    anchorX[at] = other.anchorX[k];
    anchorY[at] = other.anchorY[k];
    return at;
  }

  public int add(Pieces other, int k, int from) {
    return addPart(
        other, k, other.x0[k], other.y0[k], other.x1[k], other.y1[k], other.full[k], from);
  }

  /** Adds piece {@code k} of {@code other} travelled the other way. */
  public int addReversed(Pieces other, int k, int from) {
    int at =
        addPart(other, k, other.x1[k], other.y1[k], other.x0[k], other.y0[k], other.full[k], from);
    turn[at] = (byte) -other.turn[k];
    return at;
  }

  /** Adds a value, moved by (−ox, −oy). */
  public int add(Primitive primitive, double ox, double oy, int from) {
    Point s = primitive.start();
    Point e = primitive.end();
    if (primitive instanceof Arc arc) {
      return addArc(
          s.x() - ox,
          s.y() - oy,
          e.x() - ox,
          e.y() - oy,
          arc.center().x() - ox,
          arc.center().y() - oy,
          arc.radius(),
          arc.sweep() > 0 ? 1 : -1,
          arc.isFullCircle(),
          from);
    }
    return addLine(s.x() - ox, s.y() - oy, e.x() - ox, e.y() - oy, from);
  }

  /** Piece {@code k} as a value, moved by (ox, oy) and ending at the given points. */
  public Primitive toPrimitive(int k, Point start, Point end, double ox, double oy) {
    if (turn[k] == 0) {
      return new Line(start, end);
    }
    double sweep = full[k] ? turn[k] * 360.0 : Math.toDegrees(sweep(k));
    return new Arc(new Point(cx[k] + ox, cy[k] + oy), r[k], start, end, sweep);
  }

  /** Pieces {@code from} to {@code to} (exclusive) as a closed loop of values. */
  public Loop toLoop(int from, int to, double ox, double oy) {
    int n = to - from;
    Point[] corners = new Point[n];
    for (int i = 0; i < n; i++) {
      corners[i] = new Point(x0[from + i] + ox, y0[from + i] + oy);
    }
    Primitive[] values = new Primitive[n];
    for (int i = 0; i < n; i++) {
      values[i] = toPrimitive(from + i, corners[i], corners[i + 1 == n ? 0 : i + 1], ox, oy);
    }
    return new Loop(List.of(values));
  }

  /** Signed sweep of an arc in radians; ±2π for a whole circle. */
  public double sweep(int k) {
    if (full[k]) {
      return turn[k] * 2 * Math.PI;
    }
    double ax = x0[k] - cx[k];
    double ay = y0[k] - cy[k];
    double bx = x1[k] - cx[k];
    double by = y1[k] - cy[k];
    double cross = ax * (y1[k] - y0[k]) - ay * (x1[k] - x0[k]);
    double angle = Math.atan2(cross * turn[k], ax * bx + ay * by);
    return turn[k] * (angle < 0 ? angle + 2 * Math.PI : angle);
  }

  /** Length in mm. */
  public double length(int k) {
    if (turn[k] == 0) {
      return Math.sqrt(sq(x1[k] - x0[k]) + sq(y1[k] - y0[k]));
    }
    return r[k] * Math.abs(sweep(k));
  }

  /** Whether the ray from the centre through (px, py) meets arc {@code k}, ends included. */
  public boolean spans(int k, double px, double py) {
    if (full[k]) {
      return true;
    }
    double ax = x0[k] - cx[k];
    double ay = y0[k] - cy[k];
    double bx = x1[k] - cx[k];
    double by = y1[k] - cy[k];
    int t = turn[k];
    // From the ends, not the centre: the same products with fewer digits lost.
    double after = (ax * (py - y0[k]) - ay * (px - x0[k])) * t;
    double before = ((px - x1[k]) * by - (py - y1[k]) * bx) * t;
    if ((ax * (y1[k] - y0[k]) - ay * (x1[k] - x0[k])) * t > 0) {
      return after >= 0 && before >= 0;
    }
    return after >= 0 || before >= 0;
  }

  /** Distance in mm from a point to piece {@code k}. */
  public double distance(int k, double px, double py) {
    if (turn[k] == 0) {
      double dx = x1[k] - x0[k];
      double dy = y1[k] - y0[k];
      double vx = px - x0[k];
      double vy = py - y0[k];
      double along = vx * dx + vy * dy;
      double norm = dx * dx + dy * dy;
      if (along <= 0) {
        return Math.sqrt(vx * vx + vy * vy);
      }
      if (along >= norm) {
        return Math.sqrt(sq(px - x1[k]) + sq(py - y1[k]));
      }
      return Math.abs(dx * vy - dy * vx) / Math.sqrt(norm);
    }
    if (spans(k, px, py)) {
      double vx = px - cx[k];
      double vy = py - cy[k];
      return Math.abs(power(k, px, py)) / (Math.sqrt(vx * vx + vy * vy) + r[k]);
    }
    return Math.sqrt(Math.min(sq(px - x0[k]) + sq(py - y0[k]), sq(px - x1[k]) + sq(py - y1[k])));
  }

  /**
   * The power of a point in mm² with respect to the circle of arc {@code k}: its distance from the
   * centre squared, less the radius squared; negative inside. Counted from the anchor, so that a
   * very flat arc, whose centre lies far off, loses no digits.
   */
  public double power(int k, double px, double py) {
    double qx = px - anchorX[k];
    double qy = py - anchorY[k];
    return qx * (qx + 2 * (anchorX[k] - cx[k])) + qy * (qy + 2 * (anchorY[k] - cy[k]));
  }

  /** Writes a point near the middle of piece {@code k}, exactly on it, to {@code out}. */
  public void middle(int k, double[] out) {
    if (turn[k] == 0) {
      out[0] = (x0[k] + x1[k]) / 2;
      out[1] = (y0[k] + y1[k]) / 2;
      return;
    }
    double ax = x0[k] - cx[k];
    double ay = y0[k] - cy[k];
    if (full[k]) {
      out[0] = cx[k] - ax;
      out[1] = cy[k] - ay;
      return;
    }
    double dx = x1[k] - x0[k];
    double dy = y1[k] - y0[k];
    double chord = dx * dx + dy * dy;
    double apothem = r[k] * r[k] - chord / 4;
    if (apothem < 1e-6 * r[k] * r[k]) {
      // Nearly a half circle: a quarter turn from the start is as good.
      double share = r[k] / Math.sqrt(ax * ax + ay * ay);
      out[0] = cx[k] - ay * turn[k] * share;
      out[1] = cy[k] + ax * turn[k] * share;
      return;
    }
    apothem = Math.sqrt(apothem);
    boolean minor = (ax * dy - ay * dx) * turn[k] > 0;
    // Height of the arc's middle over the chord, to the right of travel for an arc to the left.
    double height = minor ? chord / 4 / (r[k] + apothem) : r[k] + apothem;
    double share = turn[k] * height / Math.sqrt(chord);
    double x = (x0[k] + x1[k]) / 2 + dy * share;
    double y = (y0[k] + y1[k]) / 2 - dx * share;
    // The ends may be off by a tolerance; the middle must not be.
    double off = power(k, x, y) / (2 * r[k] * r[k]);
    out[0] = x - off * (x - cx[k]);
    out[1] = y - off * (y - cy[k]);
  }

  /** Writes the unit tangent in the direction of travel at a place (x, y) on a piece. */
  public void direction(int k, double x, double y, double[] out) {
    if (turn[k] == 0) {
      tangent(k, false, out);
      return;
    }
    double vx = x - cx[k];
    double vy = y - cy[k];
    double share = turn[k] / Math.sqrt(vx * vx + vy * vy);
    out[0] = -vy * share;
    out[1] = vx * share;
  }

  /** Writes the unit tangent in the direction of travel at the start or the end of a piece. */
  public void tangent(int k, boolean atEnd, double[] out) {
    double dx;
    double dy;
    if (turn[k] == 0) {
      dx = x1[k] - x0[k];
      dy = y1[k] - y0[k];
    } else {
      double vx = (atEnd ? x1[k] : x0[k]) - cx[k];
      double vy = (atEnd ? y1[k] : y0[k]) - cy[k];
      dx = -vy * turn[k];
      dy = vx * turn[k];
    }
    double norm = Math.sqrt(dx * dx + dy * dy);
    out[0] = dx / norm;
    out[1] = dy / norm;
  }

  /** Signed curvature in 1/mm, positive where the piece turns left. */
  public double curvature(int k) {
    return turn[k] == 0 ? 0 : turn[k] / r[k];
  }

  /** Twice the signed area in mm² that the line from (ox, oy) sweeps along piece {@code k}. */
  public double doubledSweptArea(int k, double ox, double oy) {
    double chord = (x0[k] - ox) * (y1[k] - oy) - (y0[k] - oy) * (x1[k] - ox);
    return turn[k] == 0 ? chord : chord + Arc.doubledSegment(r[k], sweep(k));
  }

  /** Writes the bounds of piece {@code k} as min x, min y, max x, max y from {@code at} on. */
  public void box(int k, double[] out, int at) {
    out[at] = Math.min(x0[k], x1[k]);
    out[at + 1] = Math.min(y0[k], y1[k]);
    out[at + 2] = Math.max(x0[k], x1[k]);
    out[at + 3] = Math.max(y0[k], y1[k]);
    if (turn[k] != 0) {
      double x = cx[k];
      double y = cy[k];
      if (spans(k, x - r[k], y)) {
        out[at] = Math.min(out[at], x - r[k]);
      }
      if (spans(k, x, y - r[k])) {
        out[at + 1] = Math.min(out[at + 1], y - r[k]);
      }
      if (spans(k, x + r[k], y)) {
        out[at + 2] = Math.max(out[at + 2], x + r[k]);
      }
      if (spans(k, x, y + r[k])) {
        out[at + 3] = Math.max(out[at + 3], y + r[k]);
      }
    }
  }

  private static double sq(double v) {
    return v * v;
  }
}
