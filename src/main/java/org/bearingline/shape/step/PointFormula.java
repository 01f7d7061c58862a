package org.bearingline.shape.step;

import org.bearingline.outline.Point;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/** A point or a shift by two lengths. */
public record PointFormula(Formula x, Formula y) {

  public Point at(Values values) {
    return new Point(x.value(values), y.value(values));
  }
}
