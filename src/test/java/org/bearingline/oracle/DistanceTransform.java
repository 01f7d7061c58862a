package org.bearingline.oracle;

import java.util.Arrays;

/**
 * Exact squared Euclidean distance from every cell of a grid to the nearest marked cell, by lower
 * envelopes of parabolas, first along columns, then along rows.
 */
final class DistanceTransform {

  /** Stands for "no marked cell"; far above any squared distance, far below overflow. */
  private static final double NONE = 1e18;

  private DistanceTransform() {}

  /** Squared distances in cells, row by row. */
  static double[] squared(boolean[] marked, int columns, int rows) {
    double[] field = new double[columns * rows];
    for (int i = 0; i < field.length; i++) {
      field[i] = marked[i] ? 0 : NONE;
    }
    double[] line = new double[rows];
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        line[row] = field[row * columns + column];
      }
      double[] out = envelope(line);
      for (int row = 0; row < rows; row++) {
        field[row * columns + column] = out[row];
      }
    }
    for (int row = 0; row < rows; row++) {
      double[] out = envelope(Arrays.copyOfRange(field, row * columns, (row + 1) * columns));
      System.arraycopy(out, 0, field, row * columns, columns);
    }
    return field;
  }

  private static double[] envelope(double[] f) {
    int n = f.length;
    int[] owner = new int[n];
    double[] from = new double[n + 1];
    int top = 0;
    from[0] = Double.NEGATIVE_INFINITY;
    from[1] = Double.POSITIVE_INFINITY;
    for (int q = 1; q < n; q++) {
      double meeting = meeting(f, owner[top], q);
      while (meeting <= from[top]) {
        top--;
        meeting = meeting(f, owner[top], q);
      }
      top++;
      owner[top] = q;
      from[top] = meeting;
      from[top + 1] = Double.POSITIVE_INFINITY;
    }
    double[] out = new double[n];
    int at = 0;
    for (int q = 0; q < n; q++) {
      while (from[at + 1] < q) {
        at++;
      }
      double step = q - owner[at];
      out[q] = Math.min(NONE, step * step + f[owner[at]]);
    }
    return out;
  }

  // Where the parabolas standing on p and q, p < q, meet.
  private static double meeting(double[] f, int p, int q) {
    return ((f[q] + (double) q * q) - (f[p] + (double) p * p)) / (2.0 * (q - p));
  }
}
