package org.bearingline.outside.scan;

import java.util.List;
import org.bearingline.outline.Point;

/**
 * A corner mark as a picture shows it.
 *
 * @param set of the mark's code
 * @param letter of the mark's code
 * @param corners of its black square in pixels, from its upper left one as a clock's hand goes when
 *     the mark is held upright
 */
record SeenMark(int set, MarkLetter letter, List<Point> corners) {

  SeenMark {
    corners = List.copyOf(corners);
    if (corners.size() != 4) {
      throw new IllegalArgumentException("a mark has four corners");
    }
  }

  /** Where the diagonals cross: the picture of the centre, however the view is foreshortened. */
  Point centre() {
    Point a = corners.get(0);
    Point ac = corners.get(2).minus(a);
    Point b = corners.get(1);
    Point bd = corners.get(3).minus(b);
    double along = b.minus(a).cross(bd) / ac.cross(bd);
    return a.plus(ac.times(along));
  }

  /** The corners moved away from the centre by a factor. */
  List<Point> grown(double factor) {
    Point centre = centre();
    return corners.stream().map(c -> centre.plus(c.minus(centre).times(factor))).toList();
  }

  /** Mean length of a side, pixels. */
  double side() {
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      sum += corners.get(i).distanceTo(corners.get((i + 1) % 4));
    }
    return sum / 4;
  }
}
