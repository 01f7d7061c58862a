package org.bearingline.shape.figure;

import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.part.Contour;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.Pen;
import org.bearingline.shape.step.PointFormula;

/** A circle and an ellipse. */
final class RoundFigures {

  private RoundFigures() {}

  static Figure circle(Fields f) {
    f.allowOnly("centre", "diameter");
    PointFormula centre = f.point("centre");
    Formula diameter = f.length("diameter");
    return values ->
        Contour.routed(
            Loop.of(
                Arc.circle(
                    centre.at(values), diameter.positive(values, "the diameter of a circle") / 2)));
  }

  static Figure ellipse(Fields f) {
    f.allowOnly("centre", "size", "tilt");
    PointFormula centre = f.point("centre");
    PointFormula size = f.point("size");
    Optional<Formula> tilt = f.optionalAngle("tilt");
    return values -> {
      EllipseArc whole =
          new EllipseArc(
              centre.at(values),
              size.x().positive(values, "the size of an ellipse") / 2,
              size.y().positive(values, "the size of an ellipse") / 2,
              tilt.map(angle -> angle.value(values)).orElse(0.0),
              0,
              360);
      return Contour.routed(new Loop(Pen.at(f.place(), () -> CurveFit.fit(whole)).primitives()));
    };
  }
}
