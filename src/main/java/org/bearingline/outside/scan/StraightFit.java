package org.bearingline.outside.scan;

import java.util.List;
import java.util.function.BiFunction;
import org.bearingline.outline.Point;

/** The straight line nearest to points, by total least squares; strays are left out once. */
final class StraightFit {

  private static final double STRAY = 3;

  private StraightFit() {}

  /**
   * @param points two or more
   * @param made takes a point of the line and its unit direction
   */
  static <T> T through(List<Point> points, BiFunction<Point, Point, T> made) {
    List<Point> kept = points;
    for (int round = 0; ; round++) {
      Point mean = kept.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / kept.size());
      double xx = 0;
      double xy = 0;
      double yy = 0;
      for (Point point : kept) {
        Point from = point.minus(mean);
        xx += from.x() * from.x();
        xy += from.x() * from.y();
        yy += from.y() * from.y();
      }
      double angle = Math.atan2(2 * xy, xx - yy) / 2;
      Point direction = new Point(Math.cos(angle), Math.sin(angle));
      double[] off =
          kept.stream()
              .mapToDouble(p -> Math.abs(direction.cross(p.minus(mean))))
              .sorted()
              .toArray();
      double limit = STRAY * 1.4826 * off[off.length / 2] + 1e-9;
      List<Point> near =
          kept.stream().filter(p -> Math.abs(direction.cross(p.minus(mean))) <= limit).toList();
      if (round > 0 || near.size() < 2) {
        return made.apply(mean, direction);
      }
      kept = near;
    }
  }
}
