package org.bearingline.outline.fit;

import java.util.Set;
import java.util.stream.Collectors;
import org.bearingline.outline.Point;

/**
 * A curve whose turns of next to no radius count as corners: an all but flat fold turns round
 * within far less than the tolerance, and arcs so small would be of no use to anyone.
 */
final class SharpTurns implements CurveOnCurve {

  /** Share of the tolerance below which the radius of a turn makes it a corner. */
  private static final double CORNER_RADIUS = 1e-6;

  /** Share of the tolerance from the corner at which its directions are taken. */
  private static final double REACH = 0.01;

  /** Share of the acceleration below which the curve stands still: a cusp has its own limits. */
  private static final double CUSP = 1e-9;

  private final Curve curve;
  private final Set<Double> corners;
  private final double reach;

  private SharpTurns(Curve curve, Set<Double> corners, double reach) {
    this.curve = curve;
    this.corners = corners;
    this.reach = reach;
  }

  /** The same curve where it has no such turn. */
  static Curve cornered(Curve curve, double tolerance) {
    Set<Double> corners =
        SlowPoints.of(new Span(curve, 0, 1)).stream()
            .filter(t -> isCorner(curve, t, tolerance))
            .collect(Collectors.toUnmodifiableSet());
    return corners.isEmpty() ? curve : new SharpTurns(curve, corners, REACH * tolerance);
  }

  private static boolean isCorner(Curve curve, double t, double tolerance) {
    boolean cusp = curve.velocityAt(t).norm() <= CUSP * curve.accelerationAt(t).norm();
    return !cusp && Math.abs(curve.curvatureAt(t)) * CORNER_RADIUS * tolerance > 1;
  }

  @Override
  public Curve curve() {
    return curve;
  }

  @Override
  public Point directionAfter(double t) {
    return curve.directionAfter(corners.contains(t) ? away(t, 1) : t);
  }

  @Override
  public Point directionBefore(double t) {
    return curve.directionBefore(corners.contains(t) ? away(t, -1) : t);
  }

  // The parameter at which the curve has left the corner behind, within the curve.
  private double away(double t, int side) {
    double room = side > 0 ? 1 - t : t;
    double step = room * 1e-9;
    while (step < room / 4 && pointAt(t + side * step).distanceTo(pointAt(t)) < reach) {
      step *= 2;
    }
    return t + side * step;
  }
}
