package org.bearingline.outline.fit;

import java.util.Arrays;
import org.bearingline.outline.Point;

/**
 * The linear equations of a spline: below·xᵢ₋₁ + diagonal·xᵢ + above·xᵢ₊₁ = right, solved by
 * elimination without pivoting, which a dominant diagonal makes safe. In a ring the first row's
 * below belongs to the last unknown and the last row's above to the first.
 */
record Tridiagonal(double[] below, double[] diagonal, double[] above) {

  /** The unknowns of an open chain. */
  Point[] solve(Point[] right) {
    int n = right.length;
    double[] factor = new double[n];
    Point[] x = new Point[n];
    factor[0] = above[0] / diagonal[0];
    x[0] = right[0].times(1 / diagonal[0]);
    for (int i = 1; i < n; i++) {
      double pivot = diagonal[i] - below[i] * factor[i - 1];
      factor[i] = above[i] / pivot;
      x[i] = right[i].minus(x[i - 1].times(below[i])).times(1 / pivot);
    }
    for (int i = n - 2; i >= 0; i--) {
      x[i] = x[i].minus(x[i + 1].times(factor[i]));
    }
    return x;
  }

  /** The unknowns of a ring of three or more, by the formula of Sherman and Morrison. */
  Point[] solveRing(Point[] right) {
    int n = right.length;
    double corner = below[0];
    double farCorner = above[n - 1];
    double shift = -diagonal[0];
    double[] mended = diagonal.clone();
    mended[0] -= shift;
    mended[n - 1] -= corner * farCorner / shift;
    Tridiagonal open = new Tridiagonal(below, mended, above);
    Point[] u = new Point[n];
    Arrays.fill(u, Point.ORIGIN);
    u[0] = new Point(shift, 0);
    u[n - 1] = new Point(farCorner, 0);
    Point[] x = open.solve(right);
    Point[] z = open.solve(u);
    double share = corner / shift;
    double whole = 1 + z[0].x() + share * z[n - 1].x();
    Point taken = x[0].plus(x[n - 1].times(share)).times(1 / whole);
    for (int i = 0; i < n; i++) {
      x[i] = x[i].minus(taken.times(z[i].x()));
    }
    return x;
  }
}
