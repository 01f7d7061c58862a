package org.bearingline.shape.figure;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.PointFormula;

/** A slot with round ends, given by the centres of its ends and its width. */
record SlotFigure(PointFormula from, PointFormula to, Formula width, Place place)
    implements Figure {

  static Figure read(Fields f) {
    f.allowOnly("from", "to", "width");
    return new SlotFigure(f.point("from"), f.point("to"), f.length("width"), f.place());
  }

  @Override
  public Contour drawn(Values values) {
    Point a = from.at(values);
    Point b = to.at(values);
    if (a.distanceTo(b) < 1e-6) {
      throw new Problem(place, "both ends of this slot are the same point; draw a circle instead");
    }
    return Contour.routed(between(a, b, width.positive(values, "the width of a slot")));
  }

  static Loop between(Point a, Point b, double width) {
    double r = width / 2;
    Point aside = b.minus(a).unit().left().times(r);
    Point lowA = a.minus(aside);
    Point lowB = b.minus(aside);
    Point highB = b.plus(aside);
    Point highA = a.plus(aside);
    return Loop.of(
        new Line(lowA, lowB),
        new Arc(b, r, lowB, highB, 180),
        new Line(highB, highA),
        new Arc(a, r, highA, lowA, 180));
  }
}
