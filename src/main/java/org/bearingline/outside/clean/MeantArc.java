package org.bearingline.outside.clean;

import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.outside.StrokePiece;

/**
 * Tells a circular arc or a straight that a drawing could only say as a free curve. A cubic of two
 * equal handles at equal angles to its chord, of 4/3 tan(θ/4) radii, is the usual one for an arc of
 * sweep θ; it leaves the arc by less than 3 parts in 10,000 of the radius up to a quarter turn, and
 * by 12 where the handle is rounded to 0.55 radii.
 *
 * @param primitive what was meant
 * @param exact whether the drawing tells it to the last figure
 */
record MeantArc(Primitive primitive, boolean exact) {

  /** Share by which a handle may differ from the usual one: other programs use 0.5519 or 0.5523. */
  private static final double HANDLE = 1e-3;

  /** The same for handles rounded to two figures, such as 0.55. */
  private static final double ROUNDED = 5e-3;

  /** Share, and radians, by which the two handles may differ. */
  private static final double ALIKE = 1e-3;

  /** The same where the drawing's figures tell the arc so well that it stays as it is. */
  private static final double EXACT = 2e-5;

  /** Radians; a little more than the quarter turn that drawings use. */
  private static final double WIDEST = Math.toRadians(91);

  /** The arc or straight, and nothing for a curve that means none. */
  static Optional<MeantArc> of(Curve curve) {
    if (curve instanceof EllipseArc e
        && Math.abs(e.semiAxis() - e.otherSemiAxis()) <= 1e-9 * e.semiAxis()) {
      Arc arc = Arc.around(e.center(), e.semiAxis(), e.rotation() + e.from(), e.sweep());
      return Optional.of(new MeantArc(arc, true));
    }
    return curve instanceof CubicBezier b ? of(b) : Optional.empty();
  }

  /** A straight as drawn, an arc as a curve that may still give way to its neighbours. */
  StrokePiece stroke() {
    if (!(primitive instanceof Arc arc)) {
      return new StrokePiece.Plain(primitive);
    }
    double from = arc.start().minus(arc.center()).degrees();
    return new StrokePiece.Free(
        new EllipseArc(arc.center(), arc.radius(), arc.radius(), 0, from, arc.sweep()));
  }

  private static Optional<MeantArc> of(CubicBezier b) {
    Point chord = b.end().minus(b.start());
    Point out = b.first().minus(b.start());
    Point in = b.end().minus(b.second());
    double length = chord.norm();
    double handle = out.norm();
    if (!(length > 0)) {
      return Optional.empty();
    }
    double limit = 1e-9 * length;
    if (Math.abs(chord.cross(out)) <= limit * length
        && Math.abs(chord.cross(in)) <= limit * length
        && chord.dot(out) >= 0
        && chord.dot(in) >= 0
        && handle + in.norm() <= 2 * length) {
      return Optional.of(new MeantArc(new Line(b.start(), b.end()), true));
    }
    if (!(handle > 0) || Math.abs(in.norm() / handle - 1) > 2 * ALIKE) {
      return Optional.empty();
    }
    double before = Math.atan2(out.cross(chord), out.dot(chord));
    double after = Math.atan2(chord.cross(in), chord.dot(in));
    double sweep = before + after;
    if (Math.abs(before - after) > ALIKE || Math.abs(sweep) > WIDEST || Math.abs(sweep) < 1e-4) {
      return Optional.empty();
    }
    double radius = length / (2 * Math.sin(Math.abs(sweep) / 2));
    double usual = 4.0 / 3 * Math.tan(Math.abs(sweep) / 4) * radius;
    double mean = (handle + in.norm()) / 2;
    if (Math.abs(mean / usual - 1) > ROUNDED) {
      return Optional.empty();
    }
    boolean exact =
        Math.abs(mean / usual - 1) <= HANDLE
            && Math.abs(in.norm() / handle - 1) <= 2 * EXACT
            && Math.abs(before - after) <= EXACT;
    return Optional.of(new MeantArc(Arc.ofBulge(b.start(), b.end(), Math.tan(sweep / 4)), exact));
  }
}
