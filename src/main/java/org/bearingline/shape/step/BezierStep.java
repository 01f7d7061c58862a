package org.bearingline.shape.step;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outline.fit.QuadraticBezier;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Values;

/** A Bézier curve with one or two control points. */
record BezierStep(List<PointFormula> controls, End end, Place place) implements Step {

  static Step read(Fields f) {
    f.allowOnly("controls", "to", "by", "edge");
    f.curvedEdge();
    List<PointFormula> controls = f.points("controls");
    if (controls.isEmpty() || controls.size() > 2) {
      throw f.node().field("controls").problem("a Bézier curve has one or two control points");
    }
    return new BezierStep(controls, End.read(f), f.place());
  }

  @Override
  public void draw(Pen pen, Values values) {
    Point from = pen.at(place);
    Point to = end.from(pen, values, place);
    List<Point> pulled = controls.stream().map(control -> control.at(values)).toList();
    Curve curve =
        pulled.size() == 1
            ? new QuadraticBezier(from, pulled.get(0), to)
            : new CubicBezier(from, pulled.get(0), pulled.get(1), to);
    pen.addAll(Pen.at(place, () -> CurveFit.fit(curve)).primitives(), EdgeKind.ROUTED, place);
  }
}
