package org.bearingline.outside.scan;

import org.bearingline.outline.Point;

/**
 * A plane seen through a lens, followed back from the picture.
 *
 * @param middle of the picture, pixels
 * @param half pixels of the picture's own unit
 * @param back nine numbers, row by row: from the picture's units to mm
 * @param lens Brown's first radial term in the picture's units
 * @param under the place on the marks' plane under the camera, mm
 * @param shrink what a raised face is shrunk by towards that place, 1 where it lies with the marks
 */
record MarksMapping(
    Point middle, double half, double[] back, double lens, Point under, double shrink)
    implements Mapping {

  private static final int ROUNDS = 12;

  /** How far straight lines are bent at this place of the picture, in pixels. */
  double bend(double x, double y) {
    Point seen = new Point(x, y).minus(middle).times(1 / half);
    return seen.distanceTo(straightened(seen)) * half;
  }

  private Point straightened(Point seen) {
    double r = seen.norm();
    double straight = r;
    for (int round = 0; round < ROUNDS; round++) {
      straight = r / (1 + lens * straight * straight);
    }
    return r == 0 ? seen : seen.times(straight / r);
  }

  @Override
  public Point toMm(double x, double y) {
    Point p = straightened(new Point((x - middle.x()) / half, (y - middle.y()) / half));
    double w = back[6] * p.x() + back[7] * p.y() + back[8];
    Point ground =
        new Point(
            (back[0] * p.x() + back[1] * p.y() + back[2]) / w,
            (back[3] * p.x() + back[4] * p.y() + back[5]) / w);
    return under.plus(ground.minus(under).times(shrink));
  }
}
