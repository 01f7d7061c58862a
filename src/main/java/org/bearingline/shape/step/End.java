package org.bearingline.shape.step;

import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Values;

/**
 * Where a curved step ends: at a point, or shifted from where it begins.
 *
 * @param shifted whether the pair is a shift
 */
record End(PointFormula pair, boolean shifted) {

  static End read(Fields f) {
    if (f.count("to", "by") != 1) {
      throw f.problem("this step ends either “to” a point or “by” a shift; write one of them");
    }
    return f.has("to") ? new End(f.point("to"), false) : new End(f.point("by"), true);
  }

  Point from(Pen pen, Values values, Place place) {
    Point given = pair.at(values);
    Point from = pen.at(place);
    Point end = shifted ? from.plus(given) : given;
    if (from.distanceTo(end) < Pen.SHORTEST) {
      throw new Problem(place, "this step has no length: it begins and ends at " + Pen.words(end));
    }
    return end;
  }
}
