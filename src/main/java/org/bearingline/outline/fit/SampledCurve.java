package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A curve known by points and its directions there, as a tracing or another program's flattened
 * curve gives it: a cubic from each point to the next, which for two points of a circle with its
 * tangents is the usual cubic for that arc. Straight steps stay straight and are cut off from bent
 * ones; a point with two directions is a corner.
 */
public final class SampledCurve implements CurveOnCurve {

  /** Sine of the angle within which directions and chord count as one straight. */
  private static final double STRAIGHT = 1e-8;

  private final CurveChain chain;

  private SampledCurve(CurveChain chain) {
    this.chain = chain;
  }

  /**
   * A point of the curve.
   *
   * @param point where, in mm
   * @param in direction of travel on arrival, any length but 0
   * @param out direction of travel on leaving, any length but 0
   */
  public record Sample(Point point, Point in, Point out) {

    public Sample {
      if (!(in.norm() > 0) || !(out.norm() > 0)) {
        throw new IllegalArgumentException("a sample needs directions");
      }
      in = in.unit();
      out = out.unit();
    }

    public static Sample smooth(Point point, Point direction) {
      return new Sample(point, direction, direction);
    }

    boolean isCorner() {
      return Math.abs(in.cross(out)) > STRAIGHT || in.dot(out) < 0;
    }
  }

  /** The curve through two or more samples, neighbours at different points. */
  public static SampledCurve through(List<Sample> samples) {
    if (samples.size() < 2) {
      throw new Problem(Place.nowhere(), "a traced curve needs at least two points");
    }
    List<CubicBezier> pieces = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    List<Integer> cuts = new ArrayList<>();
    boolean straightBefore = false;
    for (int i = 0; i + 1 < samples.size(); i++) {
      Sample a = samples.get(i);
      Sample b = samples.get(i + 1);
      double chord = a.point().distanceTo(b.point());
      if (!(chord > 0)) {
        throw new Problem(
            Place.nowhere(),
            "points %d and %d of the traced curve are the same; leave one out"
                .formatted(i + 1, i + 2));
      }
      boolean straight = isStraight(a, b);
      if (i > 0 && (a.isCorner() || straight != straightBefore)) {
        cuts.add(i);
      }
      straightBefore = straight;
      pieces.add(piece(a, b, chord));
      shares.add(chord);
    }
    return new SampledCurve(new CurveChain(pieces, shares, cuts));
  }

  @Override
  public Curve curve() {
    return chain;
  }

  private static boolean isStraight(Sample a, Sample b) {
    Point along = b.point().minus(a.point()).unit();
    return Math.abs(along.cross(a.out())) < STRAIGHT
        && Math.abs(along.cross(b.in())) < STRAIGHT
        && along.dot(a.out()) > 0
        && along.dot(b.in()) > 0;
  }

  // Handles of chord / (3 cos²(θ/4)) reproduce an arc of sweep θ to the sixth order.
  private static CubicBezier piece(Sample a, Sample b, double chord) {
    double turn = Math.atan2(a.out().cross(b.in()), a.out().dot(b.in()));
    double quarter = Math.cos(turn / 4);
    double handle = chord / (3 * quarter * quarter);
    return new CubicBezier(
        a.point(),
        a.point().plus(a.out().times(handle)),
        b.point().minus(b.in().times(handle)),
        b.point());
  }
}
