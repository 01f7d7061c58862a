package org.bearingline.outline.fit;

/** Turns curves into tangent-continuous lines and arcs. */
public final class CurveFit {

  /** Tolerance in mm unless another is asked for: a fifth of what a shop can see. */
  public static final double DEFAULT_TOLERANCE = 0.02;

  private CurveFit() {}

  public static FittedCurve fit(Curve curve) {
    return fit(curve, DEFAULT_TOLERANCE);
  }

  /** Few arcs and lines that nowhere leave the curve by more than {@code tolerance} mm. */
  public static FittedCurve fit(Curve curve, double tolerance) {
    throw new UnsupportedOperationException();
  }
}
