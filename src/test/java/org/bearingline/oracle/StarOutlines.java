package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;

/**
 * Corners in order round the origin, joined by lines and arcs. Valid by construction: each edge
 * stays in the wedge between its corners' rays, because an arc stays in the triangle of its end
 * tangents and these are kept inside the wedge.
 */
final class StarOutlines {

  /**
   * One corner and the edge that follows it.
   *
   * @param share of the full turn, relative to the others
   * @param reach mm from the origin
   * @param swell how far the edge bends, in (-1, 1) of what its wedge allows; 0 is straight
   */
  private record Corner(double share, double reach, double swell) {}

  private StarOutlines() {}

  static Arbitrary<Region> any() {
    Arbitrary<Double> shares = Arbitraries.doubles().between(0.6, 1);
    Arbitrary<Double> reaches = Arbitraries.doubles().between(15, 80);
    Arbitrary<Double> swells =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(-0.9, 0.9));
    return Combinators.combine(shares, reaches, swells)
        .as(Corner::new)
        .list()
        .ofMinSize(3)
        .ofMaxSize(14)
        .map(StarOutlines::star);
  }

  private static Region star(List<Corner> corners) {
    double whole = corners.stream().mapToDouble(Corner::share).sum();
    List<Point> points = new ArrayList<>();
    double turned = 0;
    for (Corner corner : corners) {
      points.add(Point.polar(corner.reach, 360 * turned / whole));
      turned += corner.share;
    }
    Trace trace = Trace.from(points.get(0).x(), points.get(0).y());
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      double room = Math.min(angleAt(a, b), angleAt(b, a));
      trace.bulge(b.x(), b.y(), Math.tan(corners.get(i).swell * Math.min(room, 1.4) / 2));
    }
    Loop loop = trace.closed();
    return Region.of(Outline.of(loop));
  }

  // The smaller angle between the edge and the ray through one of its ends, either way along it.
  private static double angleAt(Point corner, Point other) {
    Point edge = other.minus(corner);
    double angle = Math.abs(Math.atan2(corner.cross(edge), corner.dot(edge)));
    return Math.min(angle, Math.PI - angle);
  }
}
