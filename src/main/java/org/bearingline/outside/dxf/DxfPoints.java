package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/** Reads the points of an entity. */
final class DxfPoints {

  private DxfPoints() {}

  /** Every point whose x has one group code and whose y, after it, another. */
  static List<Point> of(DxfEntity entity, int xCode, int yCode) {
    List<Point> points = new ArrayList<>();
    double x = Double.NaN;
    for (int i = 0; i < entity.count(); i++) {
      if (entity.code(i) == xCode) {
        x = entity.value(i);
      } else if (entity.code(i) == yCode && !Double.isNaN(x)) {
        points.add(new Point(x, entity.value(i)));
        x = Double.NaN;
      }
    }
    return points;
  }

  /** The first point with these group codes, which the entity must have. */
  static Point one(DxfEntity entity, int xCode, int yCode) {
    return new Point(entity.number(xCode), entity.number(yCode));
  }
}
