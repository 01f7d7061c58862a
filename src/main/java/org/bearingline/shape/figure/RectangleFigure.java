package org.bearingline.shape.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Plain;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.PointFormula;

/** A rectangle about a centre, its corners rounded, turned by a tilt. */
record RectangleFigure(
    PointFormula centre, PointFormula size, Optional<Formula> radius, Optional<Formula> tilt)
    implements Figure {

  /** Sides shorter than this, in mm, are taken up by the corners. */
  private static final double SHORTEST = 1e-6;

  static Figure read(Fields f) {
    f.allowOnly("centre", "size", "radius", "tilt");
    return new RectangleFigure(
        f.point("centre"), f.point("size"), f.optionalLength("radius"), f.optionalAngle("tilt"));
  }

  @Override
  public Contour drawn(Values values) {
    double a = size.x().positive(values, "the size of a rectangle") / 2;
    double b = size.y().positive(values, "the size of a rectangle") / 2;
    double r = radius.map(formula -> formula.notNegative(values, "a corner radius")).orElse(0.0);
    if (r > Math.min(a, b) + SHORTEST) {
      throw radius
          .orElseThrow()
          .problem(
              "a corner radius of "
                  + Plain.mm(r)
                  + " does not fit a rectangle of "
                  + Plain.mm(2 * a)
                  + " × "
                  + Plain.mm(2 * b)
                  + "; it may be at most half the shorter side");
    }
    Loop upright = upright(a, b, Math.min(r, Math.min(a, b)));
    Point middle = centre.at(values);
    double turn = tilt.map(angle -> angle.value(values)).orElse(0.0);
    return Contour.routed(
        upright.transformed(
            Similarity.rotation(turn, Point.ORIGIN)
                .then(Similarity.translation(middle.x(), middle.y()))));
  }

  private static Loop upright(double a, double b, double r) {
    List<Primitive> pieces = new ArrayList<>();
    side(pieces, new Point(-a + r, -b), new Point(a - r, -b));
    corner(pieces, new Point(a - r, -b + r), r, -90);
    side(pieces, new Point(a, -b + r), new Point(a, b - r));
    corner(pieces, new Point(a - r, b - r), r, 0);
    side(pieces, new Point(a - r, b), new Point(-a + r, b));
    corner(pieces, new Point(-a + r, b - r), r, 90);
    side(pieces, new Point(-a, b - r), new Point(-a, -b + r));
    corner(pieces, new Point(-a + r, -b + r), r, 180);
    return new Loop(pieces);
  }

  private static void side(List<Primitive> pieces, Point from, Point to) {
    if (from.distanceTo(to) > SHORTEST) {
      pieces.add(new Line(from, to));
    }
  }

  private static void corner(List<Primitive> pieces, Point middle, double r, double from) {
    if (r > 0) {
      pieces.add(Arc.around(middle, r, from, 90));
    }
  }
}
