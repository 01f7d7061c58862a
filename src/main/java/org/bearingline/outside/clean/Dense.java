package org.bearingline.outside.clean;

/** Linear equations of a few dozen unknowns, solved by elimination with row exchange. */
final class Dense {

  private Dense() {}

  /**
   * The solution, or null where there is none; the right side is overwritten.
   *
   * @param matrix rows one after the other, overwritten
   */
  static double[] solve(double[] matrix, double[] right) {
    int n = right.length;
    double[] scale = scaled(matrix, right, n);
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(matrix[i * n + k]) > Math.abs(matrix[pivot * n + k])) {
          pivot = i;
        }
      }
      double p = matrix[pivot * n + k];
      if (!(Math.abs(p) > 1e-14)) {
        return null;
      }
      swap(matrix, right, n, k, pivot);
      for (int i = k + 1; i < n; i++) {
        double factor = matrix[i * n + k] / p;
        if (factor != 0) {
          for (int j = k; j < n; j++) {
            matrix[i * n + j] -= factor * matrix[k * n + j];
          }
          right[i] -= factor * right[k];
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = right[i];
      for (int j = i + 1; j < n; j++) {
        sum -= matrix[i * n + j] * right[j];
      }
      right[i] = sum / matrix[i * n + i];
    }
    for (int i = 0; i < n; i++) {
      right[i] *= scale[i];
    }
    return right;
  }

  // Unknowns of mm, radians and 1/mm are told in units that give rows and columns one size.
  private static double[] scaled(double[] matrix, double[] right, int n) {
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      double diagonal = Math.abs(matrix[i * n + i]);
      scale[i] = diagonal > 0 ? 1 / Math.sqrt(diagonal) : 1;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix[i * n + j] *= scale[i] * scale[j];
      }
      right[i] *= scale[i];
    }
    return scale;
  }

  private static void swap(double[] matrix, double[] right, int n, int a, int b) {
    if (a == b) {
      return;
    }
    for (int j = 0; j < n; j++) {
      double m = matrix[a * n + j];
      matrix[a * n + j] = matrix[b * n + j];
      matrix[b * n + j] = m;
    }
    double r = right[a];
    right[a] = right[b];
    right[b] = r;
  }
}
