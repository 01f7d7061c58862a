package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Point;

/**
 * A rational Bézier curve of any degree: one span of a NURBS curve. Evaluated by de Casteljau's
 * steps on the weighted points (Farin, Curves and Surfaces for CAGD, chapter on rational Bézier
 * curves).
 *
 * @param points control points, two or more, in mm
 * @param weights one for each point, more than 0
 */
public record RationalBezier(List<Point> points, List<Double> weights) implements Curve {

  public RationalBezier {
    points = List.copyOf(points);
    weights = List.copyOf(weights);
    if (points.size() < 2 || points.size() != weights.size()) {
      throw new IllegalArgumentException("a Bézier curve has two or more points, each weighted");
    }
    if (!weights.stream().allMatch(w -> w > 0 && Double.isFinite(w))) {
      throw new IllegalArgumentException("the weights of a Bézier curve are more than 0");
    }
  }

  /** A curve whose points weigh the same: a polynomial. */
  public static RationalBezier polynomial(List<Point> points) {
    return new RationalBezier(points, points.stream().map(p -> 1.0).toList());
  }

  /**
   * The weighted point and its first and second derivative by the parameter.
   *
   * @param value (w x, w y, w)
   */
  private record Jet(double[] value, double[] first, double[] second) {}

  private Jet jet(double t) {
    int degree = points.size() - 1;
    double[][] net = new double[degree + 1][];
    for (int i = 0; i <= degree; i++) {
      double w = weights.get(i);
      net[i] = new double[] {w * points.get(i).x(), w * points.get(i).y(), w};
    }
    double[] first = new double[3];
    double[] second = new double[3];
    for (int left = degree; left > 0; left--) {
      if (left == 2) {
        for (int k = 0; k < 3; k++) {
          second[k] = degree * (degree - 1) * (net[2][k] - 2 * net[1][k] + net[0][k]);
        }
      }
      if (left == 1) {
        for (int k = 0; k < 3; k++) {
          first[k] = degree * (net[1][k] - net[0][k]);
        }
      }
      for (int i = 0; i < left; i++) {
        for (int k = 0; k < 3; k++) {
          net[i][k] = (1 - t) * net[i][k] + t * net[i + 1][k];
        }
      }
    }
    return new Jet(net[0], first, second);
  }

  @Override
  public Point pointAt(double t) {
    if (t == 0 || t == 1) {
      return points.get(t == 0 ? 0 : points.size() - 1);
    }
    double[] v = jet(t).value;
    return new Point(v[0] / v[2], v[1] / v[2]);
  }

  @Override
  public Point velocityAt(double t) {
    return velocity(jet(t));
  }

  private static Point velocity(Jet j) {
    double w = j.value[2];
    double x = j.value[0] / w;
    double y = j.value[1] / w;
    return new Point((j.first[0] - j.first[2] * x) / w, (j.first[1] - j.first[2] * y) / w);
  }

  @Override
  public Point accelerationAt(double t) {
    Jet j = jet(t);
    double w = j.value[2];
    Point v = velocity(j);
    double x = j.value[0] / w;
    double y = j.value[1] / w;
    return new Point(
        (j.second[0] - 2 * j.first[2] * v.x() - j.second[2] * x) / w,
        (j.second[1] - 2 * j.first[2] * v.y() - j.second[2] * y) / w);
  }

  @Override
  public int stretches() {
    return Math.max(1, points.size() - 2);
  }
}
