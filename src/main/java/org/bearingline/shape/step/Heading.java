package org.bearingline.shape.step;

import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * The direction in which a step sets out.
 *
 * @param angle counter-clockwise from the x axis; empty to go on tangent to the step before
 */
record Heading(Optional<Formula> angle) {

  static Heading read(Fields fields) {
    return new Heading(fields.optionalAngle("along"));
  }

  /** In degrees. */
  double degrees(Pen pen, Values values, Place place) {
    return angle
        .map(formula -> formula.value(values))
        .orElseGet(() -> pen.last(place).tangentAt(1).degrees());
  }

  /** As a unit vector. */
  Point vector(Pen pen, Values values, Place place) {
    return angle
        .map(formula -> Point.polar(1, formula.value(values)))
        .orElseGet(() -> pen.last(place).tangentAt(1));
  }
}
