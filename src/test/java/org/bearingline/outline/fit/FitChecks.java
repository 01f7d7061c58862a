package org.bearingline.outline.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Checks of a fitted curve against the exact one, by dense sampling both ways. */
final class FitChecks {

  private static final int SAMPLES = 20_000;

  private FitChecks() {}

  /** Largest distance from the curve to the nearest primitive. */
  static double deviation(Curve curve, List<Primitive> pieces) {
    double worst = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      Point p = curve.pointAt((double) i / SAMPLES);
      double least = Double.POSITIVE_INFINITY;
      for (Primitive piece : pieces) {
        least = Math.min(least, piece.distanceTo(p));
      }
      worst = Math.max(worst, least);
    }
    return worst;
  }

  /** Largest distance from the primitives to the chords of the sampled curve. */
  static double backDeviation(Curve curve, List<Primitive> pieces) {
    double worst = 0;
    for (Primitive piece : pieces) {
      for (int i = 0; i <= 20; i++) {
        Point p = piece.pointAt(i / 20.0);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= 4000; k++) {
          least = Math.min(least, curve.pointAt(k / 4000.0).distanceTo(p));
        }
        worst = Math.max(worst, least);
      }
    }
    return worst;
  }

  /** Largest angle in degrees between neighbours at their joints; the chain must be whole. */
  static double kink(List<Primitive> pieces) {
    double worst = 0;
    for (int i = 1; i < pieces.size(); i++) {
      assertEquals(pieces.get(i - 1).end(), pieces.get(i).start());
      worst = Math.max(worst, angle(pieces.get(i - 1).tangentAt(1), pieces.get(i).tangentAt(0)));
    }
    return worst;
  }

  static double angle(Point a, Point b) {
    return Math.toDegrees(Math.abs(Math.atan2(a.cross(b), a.dot(b))));
  }

  /** The stated deviation covers what was measured. */
  static void covered(double measured, double stated) {
    assertTrue(measured <= 1.0001 * stated + 1e-9, measured + " measured, stated " + stated);
  }

  /** The stated deviation covers what was measured and is not much more. */
  static void stated(double measured, double stated) {
    covered(measured, stated);
    assertTrue(stated <= 1.05 * measured + 1e-7, measured + " measured, stated " + stated);
  }

  /**
   * Whether the curve turns nowhere so sharply that a point of it can be nearer to the primitives
   * of another branch than to its own: the radius of curvature stays far above the tolerance.
   */
  static boolean turnsGently(Curve curve, double tolerance) {
    for (int i = 0; i <= SAMPLES; i++) {
      if (Math.abs(curve.curvatureAt((double) i / SAMPLES)) * tolerance > 0.05) {
        return false;
      }
    }
    return true;
  }

  /** Everything a smooth fit promises. */
  static FittedCurve smooth(Curve curve, double tolerance) {
    FittedCurve fitted = CurveFit.fit(curve, tolerance);
    List<Primitive> pieces = fitted.primitives();
    double measured = deviation(curve, pieces);
    assertTrue(measured <= tolerance, "strays by " + measured);
    stated(measured, fitted.maxDeviation());
    assertTrue(kink(pieces) < 1e-6, "kink of " + kink(pieces) + "°");
    boolean closed = curve.pointAt(0).equals(curve.pointAt(1));
    if (!closed) {
      assertTrue(pieces.get(0).start().distanceTo(curve.pointAt(0)) < 1e-9);
      assertTrue(pieces.get(pieces.size() - 1).end().distanceTo(curve.pointAt(1)) < 1e-9);
      assertTrue(angle(pieces.get(0).tangentAt(0), curve.directionAfter(0)) < 1e-6);
    } else {
      assertTrue(
          angle(pieces.get(pieces.size() - 1).tangentAt(1), pieces.get(0).tangentAt(0)) < 1e-6);
    }
    return fitted;
  }

  /**
   * Arcs that a smooth curve needs at least, about: ∫ (|κ'| / (124.7 tolerance))^(1/3) ds, from the
   * monospline of third degree of least deviation, max |B₃| / 3! = √3 / 216 per cubed length.
   */
  static double leastArcs(Curve curve, double tolerance) {
    double sum = 0;
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      double a = (double) i / n;
      double b = (i + 1.0) / n;
      double ds = curve.pointAt(a).distanceTo(curve.pointAt(b));
      double slope = Math.abs(curve.curvatureAt(b) - curve.curvatureAt(a)) / ds;
      if (Double.isFinite(slope)) {
        sum += Math.cbrt(slope * Math.sqrt(3) / 216 / tolerance) * ds;
      }
    }
    return sum;
  }
}
