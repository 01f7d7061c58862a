package org.bearingline.outside.scan;

import org.bearingline.outline.Point;

/**
 * Where the camera stood over the marks' plane: the view's first two columns, seen through a lens
 * of the right focal length, are as long as each other and square to each other and to the third
 * axis; the focal length is the one with which the camera is as high as was measured.
 */
final class CameraPlace {

  private static final int HALVINGS = 60;

  private CameraPlace() {}

  /**
   * The place of the plane under the lens.
   *
   * @param view nine numbers, row by row: from mm to the picture's units
   * @param height of the lens over the plane, mm
   */
  static Point under(double[] view, double height) {
    double least = Math.log(0.05);
    double most = Math.log(100);
    for (int i = 0; i < HALVINGS; i++) {
      double focal = (least + most) / 2;
      if (Math.abs(camera(view, Math.exp(focal))[2]) < height) {
        least = focal;
      } else {
        most = focal;
      }
    }
    double[] camera = camera(view, Math.exp(least));
    return new Point(camera[0], camera[1]);
  }

  private static double[] camera(double[] view, double focal) {
    double[] one = column(view, 0, focal);
    double[] two = column(view, 1, focal);
    double[] three = column(view, 2, focal);
    double scale = 2 / (norm(one) + norm(two));
    double[] r1 = times(one, scale);
    double[] r2 = times(two, scale);
    double[] r3 = cross(r1, r2);
    double[] t = times(three, scale);
    // Cramer's rule for r1 x + r2 y + r3 z = -t: right even where the columns are not quite square.
    double volume = dot(cross(r1, r2), r3);
    return new double[] {
      -dot(cross(t, r2), r3) / volume,
      -dot(cross(r1, t), r3) / volume,
      -dot(cross(r1, r2), t) / volume
    };
  }

  private static double[] column(double[] view, int at, double focal) {
    return new double[] {view[at] / focal, view[at + 3] / focal, view[at + 6]};
  }

  private static double[] times(double[] a, double factor) {
    return new double[] {a[0] * factor, a[1] * factor, a[2] * factor};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double norm(double[] a) {
    return Math.sqrt(dot(a, a));
  }
}
