package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Leaves out points of a polyline that lie near the line through the others. */
public final class PointThinning {

  private PointThinning() {}

  /**
   * The points to keep, the first and the last among them, by Douglas and Peucker's method: no
   * point left out lies farther than {@code tolerance} mm from the new line.
   */
  public static List<Point> thin(List<Point> points, double tolerance) {
    Coordinate[] all = new Coordinate[points.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    List<Point> kept = new ArrayList<>();
    GeometryFactory factory = new GeometryFactory();
    for (Coordinate c :
        DouglasPeuckerSimplifier.simplify(factory.createLineString(all), tolerance)
            .getCoordinates()) {
      kept.add(new Point(c.x, c.y));
    }
    return kept;
  }
}
