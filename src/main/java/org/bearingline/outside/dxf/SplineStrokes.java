package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.BattenCurve;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.StrokePen;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Draws a SPLINE. */
final class SplineStrokes {

  /** No program draws with a higher one; the work for each point grows with its cube. */
  private static final int HIGHEST_DEGREE = 25;

  private static final int CUBE_OF_A_LOW_DEGREE = 125;

  /** Bits of group 70. */
  private static final int CLOSED = 1;

  private final DxfEntity spline;
  private final List<Point> points;
  private final List<Point> fitPoints;
  private final double[] knots;
  private final double[] weights;

  private SplineStrokes(DxfEntity spline) {
    this.spline = spline;
    this.points = DxfPoints.of(spline, 10, 20);
    this.fitPoints = DxfPoints.of(spline, 11, 21);
    this.knots = all(40);
    double[] given = all(41);
    this.weights = given.length == 0 ? new double[points.size()] : given;
    if (given.length == 0) {
      Arrays.fill(weights, 1);
    }
  }

  static void draw(
      DxfEntity spline, Affine map, StrokePen pen, DrawingLimits limits, Tally ignored) {
    new SplineStrokes(spline).draw(map, pen, limits, ignored);
  }

  private void draw(Affine map, StrokePen pen, DrawingLimits limits, Tally ignored) {
    if (points.isEmpty() && fitPoints.size() > 1) {
      batten(map, pen, limits);
      ignored.add(
          "spline without control points, drawn as a batten through its points",
          "splines without control points, drawn as battens through their points");
      return;
    }
    int degree = spline.flags(71);
    check(degree);
    limits.addPoints(effort(points.size(), degree), spline.place());
    List<Curve> curves = new SplineSpans(degree, knots, points, weights).curves(map);
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      if (i == 0) {
        pen.beginAt(curve.pointAt(0));
      }
      pen.curveTo(near(curve));
    }
    pen.lift((spline.flags(70) & CLOSED) != 0);
  }

  /** How many points of a low degree take as long. */
  private static int effort(int points, int degree) {
    return (int)
        Math.min(
            Integer.MAX_VALUE,
            (long) points * Math.max(1, degree * degree * degree / CUBE_OF_A_LOW_DEGREE));
  }

  private Curve near(Curve curve) {
    DrawingLimits.near(curve.pointAt(0), spline.place());
    DrawingLimits.near(curve.pointAt(1), spline.place());
    return curve;
  }

  private void batten(Affine map, StrokePen pen, DrawingLimits limits) {
    List<Point> through = new ArrayList<>();
    for (Point p : fitPoints) {
      Point mapped = DrawingLimits.near(map.apply(p), spline.place());
      if (through.isEmpty() || mapped.distanceTo(through.get(through.size() - 1)) > 1e-9) {
        through.add(mapped);
      }
    }
    limits.addPoints(through.size(), spline.place());
    if (through.size() > 1) {
      pen.beginAt(through.get(0));
      pen.curveTo(BattenCurve.through(through));
      pen.lift((spline.flags(70) & CLOSED) != 0);
    }
  }

  private void check(int degree) {
    Place place = spline.place();
    if (degree < 1 || degree > HIGHEST_DEGREE) {
      throw new Problem(place, "a spline has a degree from 1 to 25; the file is damaged there");
    }
    if (points.size() <= degree || knots.length != points.size() + degree + 1) {
      throw new Problem(
          place,
          "the spline has "
              + points.size()
              + " control points and "
              + knots.length
              + " knots, which do not belong together; the file is damaged there");
    }
    for (int i = 1; i < knots.length; i++) {
      if (knots[i] < knots[i - 1]) {
        throw new Problem(place, "the knots of the spline fall; the file is damaged there");
      }
    }
    if (weights.length != points.size()
        || Arrays.stream(weights).anyMatch(weight -> !(weight > 1e-9 && weight < 1e9))) {
      throw new Problem(
          place, "the spline needs one weight above 0 for each control point; redraw it");
    }
  }

  private double[] all(int code) {
    double[] found = new double[spline.count()];
    int count = 0;
    for (int i = 0; i < spline.count(); i++) {
      if (spline.code(i) == code) {
        found[count++] = spline.value(i);
      }
    }
    return Arrays.copyOf(found, count);
  }
}
