package org.bearingline.shape.figure;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Plain;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.PointFormula;

/** Two slots with round ends that cross at right angles in their middles. */
record CrossFigure(
    PointFormula centre, PointFormula size, Formula width, Optional<Formula> tilt, Place place)
    implements Figure {

  static Figure read(Fields f) {
    f.allowOnly("centre", "size", "width", "tilt");
    return new CrossFigure(
        f.point("centre"), f.point("size"), f.length("width"), f.optionalAngle("tilt"), f.place());
  }

  @Override
  public Contour drawn(Values values) {
    Point middle = centre.at(values);
    double w = width.positive(values, "the width of a slot");
    double turn = tilt.map(angle -> angle.value(values)).orElse(0.0);
    return UnionFigure.merged(
        List.of(
            slot(middle, arm(size.x(), values, w), w, turn),
            slot(middle, arm(size.y(), values, w), w, turn + 90)),
        place);
  }

  private static double arm(Formula length, Values values, double width) {
    double whole = length.positive(values, "the length of a slot");
    if (whole <= width) {
      throw length.problem(
          "a slot of a cross is longer than its width, and here "
              + Plain.mm(whole)
              + " is not more than "
              + Plain.mm(width));
    }
    return (whole - width) / 2;
  }

  private static Loop slot(Point middle, double arm, double width, double degrees) {
    Point out = Point.polar(arm, degrees);
    return SlotFigure.between(middle.minus(out), middle.plus(out), width);
  }
}
