package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The curve of a thin batten bent through points: an interpolating cubic spline over the chord
 * lengths, with continuous direction and curvature. A free end is straight (second derivative 0); a
 * held end has a given direction; a closed batten has no ends.
 */
public final class BattenCurve implements CurveOnCurve {

  private final CurveChain chain;

  private BattenCurve(CurveChain chain) {
    this.chain = chain;
  }

  /** Through two or more points with free ends (natural spline). */
  public static BattenCurve through(List<Point> points) {
    return through(points, Optional.empty(), Optional.empty());
  }

  /** Through two or more points; a given direction of travel (any length) holds an end. */
  public static BattenCurve through(
      List<Point> points, Optional<Point> startDirection, Optional<Point> endDirection) {
    requirePoints(points, 2);
    double[] h = chords(points, false);
    int n = points.size();
    double[] below = new double[n];
    double[] diagonal = new double[n];
    double[] above = new double[n];
    Point[] right = new Point[n];
    for (int i = 1; i < n - 1; i++) {
      below[i] = h[i - 1];
      diagonal[i] = 2 * (h[i - 1] + h[i]);
      above[i] = h[i];
      right[i] = slope(points, h, i).minus(slope(points, h, i - 1)).times(6);
    }
    diagonal[0] = 1;
    right[0] = Point.ORIGIN;
    diagonal[n - 1] = 1;
    right[n - 1] = Point.ORIGIN;
    if (startDirection.isPresent()) {
      diagonal[0] = 2 * h[0];
      above[0] = h[0];
      right[0] = slope(points, h, 0).minus(held(startDirection.get())).times(6);
    }
    if (endDirection.isPresent()) {
      diagonal[n - 1] = 2 * h[n - 2];
      below[n - 1] = h[n - 2];
      right[n - 1] = held(endDirection.get()).minus(slope(points, h, n - 2)).times(6);
    }
    Point[] bends = new Tridiagonal(below, diagonal, above).solve(right);
    return bent(points, h, bends);
  }

  /** Closed and smooth through three or more points, the first not repeated. */
  public static BattenCurve closed(List<Point> points) {
    requirePoints(points, 3);
    double[] h = chords(points, true);
    int n = points.size();
    double[] below = new double[n];
    double[] diagonal = new double[n];
    Point[] right = new Point[n];
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      below[i] = h[before];
      diagonal[i] = 2 * (h[before] + h[i]);
      right[i] = slope(points, h, i).minus(slope(points, h, before)).times(6);
    }
    return bent(points, h, new Tridiagonal(below, diagonal, h).solveRing(right));
  }

  @Override
  public Curve curve() {
    return chain;
  }

  /** The cubics over chords {@code h} whose second derivatives at the points are {@code bends}. */
  private static BattenCurve bent(List<Point> points, double[] h, Point[] bends) {
    List<CubicBezier> pieces = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    int n = points.size();
    for (int i = 0; i < h.length; i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % n);
      Point bendA = bends[i];
      Point bendB = bends[(i + 1) % n];
      Point slope = slope(points, h, i);
      Point out = slope.minus(bendA.times(2).plus(bendB).times(h[i] / 6));
      Point in = slope.plus(bendA.plus(bendB.times(2)).times(h[i] / 6));
      pieces.add(new CubicBezier(a, a.plus(out.times(h[i] / 3)), b.minus(in.times(h[i] / 3)), b));
      shares.add(h[i]);
    }
    return new BattenCurve(new CurveChain(pieces, shares, List.of()));
  }

  private static Point slope(List<Point> points, double[] h, int i) {
    return points.get((i + 1) % points.size()).minus(points.get(i)).times(1 / h[i]);
  }

  private static Point held(Point direction) {
    if (!(direction.norm() > 0)) {
      throw new Problem(
          Place.nowhere(), "the direction that holds a batten's end must not be zero");
    }
    return direction.unit();
  }

  private static double[] chords(List<Point> points, boolean closed) {
    int n = closed ? points.size() : points.size() - 1;
    double[] h = new double[n];
    for (int i = 0; i < n; i++) {
      h[i] = points.get(i).distanceTo(points.get((i + 1) % points.size()));
      if (!(h[i] > 0)) {
        throw new Problem(
            Place.nowhere(),
            "points %d and %d of the batten are the same; leave one out"
                .formatted(i + 1, (i + 1) % points.size() + 1));
      }
    }
    return h;
  }

  private static void requirePoints(List<Point> points, int least) {
    if (points.size() < least) {
      throw new Problem(
          Place.nowhere(),
          "a batten needs at least %d points to bend through, not %d"
              .formatted(least, points.size()));
    }
  }
}
