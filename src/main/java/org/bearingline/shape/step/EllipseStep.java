package org.bearingline.shape.step;

import java.util.Optional;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.construct.Side;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * An arc of an ellipse to a point; it begins and ends on the ellipse.
 *
 * @param semiAxes half the axes: the first along {@code tilt}, the second square to it
 */
record EllipseStep(
    PointFormula centre,
    PointFormula semiAxes,
    Optional<Formula> tilt,
    End end,
    Side turn,
    Place place)
    implements Step {

  /** How far, as a share of the size, an end may lie off the ellipse: rounding of formulas. */
  private static final double ON_ELLIPSE = 1e-6;

  static Step read(Fields f) {
    f.allowOnly("centre", "semi_axes", "tilt", "to", "by", "turn", "edge");
    f.curvedEdge();
    return new EllipseStep(
        f.point("centre"),
        f.point("semi_axes"),
        f.optionalAngle("tilt"),
        End.read(f),
        f.side("turn"),
        f.place());
  }

  @Override
  public void draw(Pen pen, Values values) {
    Point middle = centre.at(values);
    double a = semiAxes.x().positive(values, "half an axis");
    double b = semiAxes.y().positive(values, "half an axis");
    double turned = tilt.map(angle -> angle.value(values)).orElse(0.0);
    double from = anomaly(pen.at(place), middle, a, b, turned, "begins");
    double to = anomaly(end.from(pen, values, place), middle, a, b, turned, "ends");
    double sweep =
        turn == Side.LEFT ? Degrees.normalised(to - from) : -Degrees.normalised(from - to);
    EllipseArc arc = new EllipseArc(middle, a, b, turned, from, sweep);
    pen.addAll(Pen.at(place, () -> CurveFit.fit(arc)).primitives(), EdgeKind.ROUTED, place);
  }

  /** The eccentric anomaly of a point on the ellipse, in degrees. */
  private double anomaly(
      Point point, Point middle, double a, double b, double turned, String verb) {
    Point out = point.minus(middle);
    double c = Degrees.cos(turned);
    double s = Degrees.sin(turned);
    Point scaled = new Point((c * out.x() + s * out.y()) / a, (c * out.y() - s * out.x()) / b);
    if (Math.abs(scaled.norm() - 1) > ON_ELLIPSE) {
      throw new Problem(
          place,
          "this step "
              + verb
              + " at "
              + Pen.words(point)
              + ", which does not lie on its ellipse; change the centre or the half axes");
    }
    return scaled.degrees();
  }
}
