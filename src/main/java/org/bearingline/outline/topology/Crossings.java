package org.bearingline.outline.topology;

/**
 * Finds where pieces meet and notes it as {@link Cuts}. An end within the tolerance of another
 * piece counts as lying on it; a crossing so near to such an end that the two pieces part by less
 * than the tolerance in between is that end. So pieces that lie on each other are cut at each
 * other's ends only, and what is left of them coincides.
 */
public final class Crossings {

  /** Share of the tolerance that is rounding: its root would draw one contact apart into two. */
  private static final double ROUNDING = 1.0 / 256;

  private final Pieces p;
  private final double tolerance;
  private final Cuts cuts;
  private final double[] touchX = new double[4];
  private final double[] touchY = new double[4];
  private int touches;
  private int met;
  private double lastX;
  private double lastY;
  private double near;
  private double far;

  /**
   * @param tolerance mm
   */
  public Crossings(Pieces pieces, double tolerance) {
    this.p = pieces;
    this.tolerance = tolerance;
    this.cuts = new Cuts(pieces);
  }

  public Cuts cuts() {
    return cuts;
  }

  /** Cuts each piece at its meetings with every other. */
  public void findAll() {
    PieceIndex index = new PieceIndex(p);
    for (int i = 0; i < p.size(); i++) {
      int count = index.queryAround(i, tolerance);
      int[] hits = index.hits();
      for (int h = 0; h < count; h++) {
        if (hits[h] > i) {
          cross(i, hits[h]);
        }
      }
    }
  }

  /** Notes the meetings of two pieces; returns how many inner crossings or contacts were found. */
  public int cross(int i, int j) {
    touches = 0;
    met = 0;
    touch(p.x0[i], p.y0[i], j);
    if (!p.full[i]) {
      touch(p.x1[i], p.y1[i], j);
    }
    touch(p.x0[j], p.y0[j], i);
    if (!p.full[j]) {
      touch(p.x1[j], p.y1[j], i);
    }
    if (p.turn[i] == 0) {
      if (p.turn[j] == 0) {
        if (touches == 0) {
          lines(i, j);
        }
      } else {
        lineAndArc(i, j);
      }
    } else if (p.turn[j] == 0) {
      lineAndArc(j, i);
    } else if (p.r[i] <= p.r[j]) {
      arcs(i, j);
    } else {
      arcs(j, i);
    }
    return met;
  }

  /** The x of the last meeting noted. */
  public double lastX() {
    return lastX;
  }

  public double lastY() {
    return lastY;
  }

  private void touch(double x, double y, int on) {
    if (p.distance(on, x, y) > tolerance) {
      return;
    }
    touchX[touches] = x;
    touchY[touches] = y;
    touches++;
    if (!nearEnd(on, x, y)) {
      cuts.add(on, x, y);
      note(x, y);
    }
  }

  private void note(double x, double y) {
    met++;
    lastX = x;
    lastY = y;
  }

  private boolean nearEnd(int k, double x, double y) {
    double limit = tolerance * tolerance;
    return square(x - p.x0[k], y - p.y0[k]) <= limit || square(x - p.x1[k], y - p.y1[k]) <= limit;
  }

  private void lines(int i, int j) {
    double ax = p.x1[i] - p.x0[i];
    double ay = p.y1[i] - p.y0[i];
    double bx = p.x1[j] - p.x0[j];
    double by = p.y1[j] - p.y0[j];
    double wx = p.x0[j] - p.x0[i];
    double wy = p.y0[j] - p.y0[i];
    double det = ax * by - ay * bx;
    double t = (wx * by - wy * bx) / det;
    double u = (wx * ay - wy * ax) / det;
    if (t > 0 && t < 1 && u > 0 && u < 1) {
      both(i, j, p.x0[i] + t * ax, p.y0[i] + t * ay);
    }
  }

  private void lineAndArc(int line, int arc) {
    double dx = p.x1[line] - p.x0[line];
    double dy = p.y1[line] - p.y0[line];
    double length = Math.sqrt(dx * dx + dy * dy);
    double ux = dx / length;
    double uy = dy / length;
    double radius = p.r[arc];
    double half = roots(arc, p.x0[line], p.y0[line], ux, uy, 2 * radius);
    if (half >= 0) {
      double sine = half / radius;
      lineHit(line, arc, near, ux, uy, length, sine);
      if (half > 0) {
        lineHit(line, arc, far, ux, uy, length, sine);
      }
    }
  }

  /**
   * Where the straight line from (x, y) in direction (ux, uy) meets the circle of an arc: {@link
   * #near} and {@link #far} in mm along it. Neither root is a difference of great numbers, so a far
   * centre does no harm.
   *
   * @param steep mm by which half the chord squared grows per mm that the line comes nearer
   * @return half the chord in mm; negative where the line passes by more than the tolerance
   */
  private double roots(int arc, double x, double y, double ux, double uy, double steep) {
    double b = ux * (x - p.cx[arc]) + uy * (y - p.cy[arc]);
    double c = p.power(arc, x, y);
    double square = b * b - c;
    if (square < -steep * tolerance) {
      return -1;
    }
    double half = square < steep * tolerance * ROUNDING ? 0 : Math.sqrt(square);
    double q = b < 0 ? half - b : -half - b;
    far = q;
    near = half == 0 ? q : c / q;
    return half;
  }

  private void lineHit(
      int line, int arc, double at, double ux, double uy, double length, double sine) {
    if (at <= 0 || at >= length) {
      return;
    }
    double x = p.x0[line] + at * ux;
    double y = p.y0[line] + at * uy;
    if (p.spans(arc, x, y) && !knownTouch(x, y, sine)) {
      both(line, arc, x, y);
    }
  }

  // Both circles meet the line of equal power, so that line is met with one of them.
  private void arcs(int i, int j) {
    double nx = p.cx[i] - p.cx[j];
    double ny = p.cy[i] - p.cy[j];
    double apart = Math.sqrt(nx * nx + ny * ny);
    double r = p.r[i];
    double s = p.r[j];
    if (apart == 0 || apart + Math.abs(r - s) <= tolerance) {
      return; // One circle, or none in common: the ends have said all.
    }
    double ux = nx / apart;
    double uy = ny / apart;
    // How far the line of equal power passes the start of arc i.
    double along = -p.power(j, p.x0[i], p.y0[i]) / (2 * apart);
    double x = p.x0[i] + along * ux;
    double y = p.y0[i] + along * uy;
    double half = roots(i, x, y, -uy, ux, 2 * r * s / apart);
    if (half >= 0) {
      double sine = half * apart / (r * s);
      arcHit(i, j, x - near * uy, y + near * ux, sine);
      if (half > 0) {
        arcHit(i, j, x - far * uy, y + far * ux, sine);
      }
    }
  }

  private void arcHit(int i, int j, double x, double y, double sine) {
    if (p.spans(i, x, y) && p.spans(j, x, y) && !knownTouch(x, y, sine)) {
      both(i, j, x, y);
    }
  }

  // Near a touching end the pieces run within the tolerance over tolerance / sine mm.
  private boolean knownTouch(double x, double y, double sine) {
    double reach = tolerance + tolerance / Math.max(sine, 1e-300);
    for (int t = 0; t < touches; t++) {
      if (square(x - touchX[t], y - touchY[t]) <= reach * reach) {
        return true;
      }
    }
    return false;
  }

  private void both(int i, int j, double x, double y) {
    cuts.add(i, x, y);
    cuts.add(j, x, y);
    note(x, y);
  }

  private static double square(double dx, double dy) {
    return dx * dx + dy * dy;
  }
}
