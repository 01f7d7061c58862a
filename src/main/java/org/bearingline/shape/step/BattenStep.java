package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.BattenCurve;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * The curve of a thin batten bent through points, each end free or held in a direction.
 *
 * @param tangent whether the start goes on tangent to the step before
 */
record BattenStep(
    List<PointFormula> through,
    boolean tangent,
    Optional<Formula> leaving,
    Optional<Formula> arriving,
    Place place)
    implements Step {

  static Step read(Fields f) {
    f.allowOnly("through", "leaving", "arriving", "edge");
    f.curvedEdge();
    List<PointFormula> points = f.points("through");
    if (points.isEmpty()) {
      throw f.node().field("through").problem("a batten curve needs a point to go through");
    }
    boolean tangent =
        f.has("leaving")
            && f.node().field("leaving").isScalar()
            && f.node().field("leaving").text().equals("tangent");
    return new BattenStep(
        points,
        tangent,
        tangent ? Optional.empty() : f.optionalAngle("leaving"),
        f.optionalAngle("arriving"),
        f.place());
  }

  @Override
  public void draw(Pen pen, Values values) {
    List<Point> points = new ArrayList<>();
    points.add(pen.at(place));
    for (PointFormula formula : through) {
      Point point = formula.at(values);
      if (point.distanceTo(points.get(points.size() - 1)) < Pen.SHORTEST) {
        throw new Problem(
            formula.x().place(),
            "this point is the same as the one before, " + Pen.words(point) + "; remove one");
      }
      points.add(point);
    }
    Optional<Point> start =
        tangent
            ? Optional.of(pen.last(place).tangentAt(1))
            : leaving.map(angle -> Point.polar(1, angle.value(values)));
    Optional<Point> end = arriving.map(angle -> Point.polar(1, angle.value(values)));
    pen.addAll(
        Pen.at(place, () -> CurveFit.fit(BattenCurve.through(points, start, end))).primitives(),
        EdgeKind.ROUTED,
        place);
  }
}
