package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.QuadraticBezier;
import org.bearingline.outline.fit.RationalBezier;
import org.bearingline.outside.Affine;

/**
 * Cuts a B-spline at its knots into Bézier curves, exactly: each control point of a span is a value
 * of the spline's polar form (Ramshaw, Blossoms are polar forms, 1989).
 */
final class SplineSpans {

  private final int degree;
  private final double[] knots;
  private final double[][] net;
  private final boolean isPolynomial;

  /**
   * @param degree 1 or more
   * @param knots rising, as many as points and degree and 1
   * @param points control points
   * @param weights one for each point, more than 0
   */
  SplineSpans(int degree, double[] knots, List<Point> points, double[] weights) {
    this.degree = degree;
    this.knots = knots;
    this.net = new double[points.size()][];
    boolean same = true;
    for (int i = 0; i < net.length; i++) {
      double w = weights[i];
      net[i] = new double[] {w * points.get(i).x(), w * points.get(i).y(), w};
      same &= w == weights[0];
    }
    this.isPolynomial = same;
  }

  /** The curves in their order, mapped; spans without length of parameter are none. */
  List<Curve> curves(Affine map) {
    List<Curve> curves = new ArrayList<>();
    for (int span = degree; span < net.length; span++) {
      if (knots[span + 1] > knots[span]) {
        curves.add(curve(span, map));
      }
    }
    return curves;
  }

  private Curve curve(int span, Affine map) {
    List<Point> points = new ArrayList<>(degree + 1);
    List<Double> weights = new ArrayList<>(degree + 1);
    for (int late = 0; late <= degree; late++) {
      double[] value = polar(span, late);
      points.add(map.apply(value[0] / value[2], value[1] / value[2]));
      weights.add(isPolynomial ? 1.0 : value[2]);
    }
    if (isPolynomial && degree == 2) {
      return new QuadraticBezier(points.get(0), points.get(1), points.get(2));
    }
    if (isPolynomial && degree == 3) {
      return new CubicBezier(points.get(0), points.get(1), points.get(2), points.get(3));
    }
    return new RationalBezier(points, weights);
  }

  /**
   * The polar form of a span with {@code late} arguments at its end and the others at its start.
   */
  private double[] polar(int span, int late) {
    double[][] d = new double[degree + 1][];
    for (int i = 0; i <= degree; i++) {
      d[i] = net[span - degree + i].clone();
    }
    for (int step = 1; step <= degree; step++) {
      double u = step <= degree - late ? knots[span] : knots[span + 1];
      for (int i = degree; i >= step; i--) {
        double from = knots[span - degree + i];
        double to = knots[span + 1 + i - step];
        double share = (u - from) / (to - from);
        for (int k = 0; k < 3; k++) {
          d[i][k] = (1 - share) * d[i - 1][k] + share * d[i][k];
        }
      }
    }
    return d[degree];
  }
}
