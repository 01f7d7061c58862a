package org.bearingline.outside.scan;

import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * How unsteady a traced edge is: the distance of its points from the parabola through the points
 * round each (the smoothing of Savitzky and Golay, Analytical Chemistry 36, 1964).
 */
final class TraceNoise {

  private static final int HALF = 8;
  private static final double[] WEIGHTS = new double[2 * HALF + 1];

  static {
    double m = HALF;
    for (int j = -HALF; j <= HALF; j++) {
      WEIGHTS[j + HALF] =
          3 * (3 * m * m + 3 * m - 1 - 5.0 * j * j) / ((2 * m - 1) * (2 * m + 1) * (2 * m + 3));
    }
  }

  private TraceNoise() {}

  /**
   * Standard deviation across the edge, in pixels, from the median so that corners do not count.
   */
  static double of(List<TracedLoop> loops) {
    int all = loops.stream().mapToInt(TracedLoop::size).sum();
    double[] off = new double[all];
    int count = 0;
    for (TracedLoop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        off[count++] = off(loop, i);
      }
    }
    Arrays.sort(off);
    return count == 0 ? 0 : 1.4826 * off[count / 2] / Math.sqrt(1 - WEIGHTS[HALF]);
  }

  private static double off(TracedLoop loop, int i) {
    double x = 0;
    double y = 0;
    for (int j = -HALF; j <= HALF; j++) {
      Point point = loop.point(i + j);
      x += WEIGHTS[j + HALF] * point.x();
      y += WEIGHTS[j + HALF] * point.y();
    }
    Point here = loop.point(i);
    Point along = loop.point(i + HALF).minus(loop.point(i - HALF));
    double norm = along.norm();
    return norm == 0 ? 0 : Math.abs(along.cross(new Point(here.x() - x, here.y() - y))) / norm;
  }
}
