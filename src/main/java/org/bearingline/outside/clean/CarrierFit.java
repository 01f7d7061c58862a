package org.bearingline.outside.clean;

/**
 * The straight or circle of least squared distances to a stretch of samples, each weighed by the
 * length of line it stands for. Gauss and Newton's method on the distance itself, from the circle
 * through three of the samples: no bias towards small radii, as algebraic fits have on short arcs.
 */
final class CarrierFit {

  private static final int STEPS = 4;

  /** As many samples as tell where a carrier lies; all of them are asked whether it fits. */
  private static final int MOST_SAMPLES = 400;

  private final Course course;
  private final double[] weight;

  CarrierFit(Course course) {
    this.course = course;
    weight = new double[course.size];
    for (int i = 0; i + 1 < course.size; i++) {
      if (course.isAnchor(i)) {
        continue; // It cannot move, whatever it weighs.
      }
      double half = course.length(i) / 2;
      weight[i] += half;
      weight[i + 1] += half;
    }
  }

  double weight(int i) {
    return weight[i];
  }

  /** The straight along samples {@code from} to {@code to}. */
  Carrier line(int from, int to) {
    double sum = 0;
    double mx = 0;
    double my = 0;
    double ox = course.x[from];
    double oy = course.y[from];
    int stride = stride(from, to);
    for (int i = from; i <= to; i = next(i, to, stride)) {
      double w = inner(i, from, to);
      sum += w;
      mx += w * (course.x[i] - ox);
      my += w * (course.y[i] - oy);
    }
    mx = ox + mx / sum;
    my = oy + my / sum;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = from; i <= to; i = next(i, to, stride)) {
      double w = inner(i, from, to);
      double dx = course.x[i] - mx;
      double dy = course.y[i] - my;
      xx += w * dx * dx;
      xy += w * dx * dy;
      yy += w * dy * dy;
    }
    double angle = Math.atan2(2 * xy, xx - yy) / 2;
    double tx = Math.cos(angle);
    double ty = Math.sin(angle);
    double ahead = tx * (course.x[to] - course.x[from]) + ty * (course.y[to] - course.y[from]);
    return ahead < 0 ? new Carrier(mx, my, -tx, -ty, 0) : new Carrier(mx, my, tx, ty, 0);
  }

  private static int stride(int from, int to) {
    return Math.max(1, (to - from) / MOST_SAMPLES);
  }

  // The last sample is always among them.
  private static int next(int i, int to, int stride) {
    return i < to ? Math.min(to, i + stride) : to + 1;
  }

  // The weight of a sample within a stretch: its ends stand for the steps inside only.
  private double inner(int i, int from, int to) {
    if (i == from && from < to) {
      return course.length(i) / 2;
    }
    return i == to && from < to ? course.length(i - 1) / 2 : weight[i];
  }

  /** The circle along samples {@code from} to {@code to}, or null where none is to be found. */
  Carrier circle(int from, int to) {
    Carrier carrier = throughThree(from, to);
    for (int i = 0; i < STEPS && carrier != null; i++) {
      Carrier better = improved(carrier, from, to);
      if (better == null) {
        return carrier;
      }
      carrier = better;
    }
    return carrier;
  }

  private Carrier throughThree(int from, int to) {
    boolean round = course.x[from] == course.x[to] && course.y[from] == course.y[to];
    int a = from;
    int b = (from + to) / 2;
    int c = round ? b + (to - b) / 2 : to;
    b = round ? from + (c - from) / 2 : b;
    int h = (to - from) / 16;
    double ax = mean(course.x, a, from, to, h);
    double ay = mean(course.y, a, from, to, h);
    double bx = mean(course.x, b, from, to, h);
    double by = mean(course.y, b, from, to, h);
    double cx = mean(course.x, c, from, to, h);
    double cy = mean(course.y, c, from, to, h);
    double ux = bx - ax;
    double uy = by - ay;
    double vx = cx - ax;
    double vy = cy - ay;
    double cross = ux * vy - uy * vx;
    double uu = ux * ux + uy * uy;
    double vv = vx * vx + vy * vy;
    double wx = cx - bx;
    double wy = cy - by;
    double ww = wx * wx + wy * wy;
    if (!(uu > 0) || !(vv > 0) || !(ww > 0)) {
      return null;
    }
    // Of the circle through three points: κ = 2 · cross / (product of the sides).
    double curvature = 2 * cross / Math.sqrt(uu * vv * ww);
    // The direction at b: tangent angles by the chords before and after it.
    double chordAB = Math.atan2(uy, ux);
    double bend = Math.asin(Math.max(-1, Math.min(1, curvature * Math.sqrt(uu) / 2)));
    double heading = chordAB + bend;
    if (ux * wx + uy * wy < 0 && Math.abs(bend) < Math.PI / 4) {
      return null;
    }
    return new Carrier(bx, by, Math.cos(heading), Math.sin(heading), curvature);
  }

  // Of a few samples about one, so that noise does not lead the first guess astray.
  private static double mean(double[] of, int at, int from, int to, int half) {
    int low = Math.max(from, at - half);
    int high = Math.min(to, at + half);
    int stride = Math.max(1, (high - low) / 16);
    double sum = 0;
    int count = 0;
    for (int i = low; i <= high; i += stride) {
      sum += of[i];
      count++;
    }
    return sum / count;
  }

  private Carrier improved(Carrier c, int from, int to) {
    double[] m = new double[9];
    double[] v = new double[3];
    DistanceSlopes slopes = new DistanceSlopes(c);
    int stride = stride(from, to);
    for (int i = from; i <= to; i = next(i, to, stride)) {
      slopes.at(course.x[i], course.y[i]);
      double w = inner(i, from, to);
      double f = slopes.off();
      double gb = -slopes.left();
      double gt = slopes.turned();
      double gk = slopes.bent();
      m[0] += w * gb * gb;
      m[1] += w * gb * gt;
      m[2] += w * gb * gk;
      m[4] += w * gt * gt;
      m[5] += w * gt * gk;
      m[8] += w * gk * gk;
      v[0] -= w * gb * f;
      v[1] -= w * gt * f;
      v[2] -= w * gk * f;
    }
    m[3] = m[1];
    m[6] = m[2];
    m[7] = m[5];
    double[] d = Dense.solve(m, v);
    if (d == null) {
      return null;
    }
    double turn = Math.max(-0.5, Math.min(0.5, d[1]));
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Carrier(
        c.x() - c.ty() * d[0],
        c.y() + c.tx() * d[0],
        c.tx() * cos - c.ty() * sin,
        c.ty() * cos + c.tx() * sin,
        c.curvature() + d[2]);
  }
}
