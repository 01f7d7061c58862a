package org.bearingline.outline.construct;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A reverse curve between two parallel tangents: an arc, an optional straight, and an arc turning
 * back by the same angle. With S the sum of the radii, s the straight and α the turn, as in the
 * railway and surveying books: rise = S (1 − cos α) + s sin α and run = S sin α + s cos α. From
 * these follow tan(α/2) = rise / (run + s) and run² + rise² = 2 S rise + s².
 *
 * <p>Which two of rise, run, radii, straight and turn are given is in the name of the factory; all
 * lengths are mm. What cannot be drawn fails with a {@link org.bearingline.problem.Problem}.
 *
 * @param firstRadius mm, more than 0
 * @param secondRadius mm, more than 0
 * @param straight length of the straight between the arcs in mm, 0 or more
 * @param turn degrees that each arc turns, more than 0, at most 90: more would overhang
 */
public record ReverseCurve(double firstRadius, double secondRadius, double straight, double turn) {

  /** A straight shorter than this, in mm, is only rounding. */
  private static final double NO_STRAIGHT = 1e-9;

  /** Share by which computed limits may be passed. */
  private static final double ROUNDING = 1e-12;

  public ReverseCurve {
    Sizes.requirePositive("first radius", firstRadius);
    Sizes.requirePositive("second radius", secondRadius);
    if (straight != 0) {
      Sizes.requirePositive("straight between the arcs", straight);
    }
    Sizes.requireTurn("turn of each arc", turn, 90);
  }

  public static ReverseCurve ofRadiiAndTurn(double r1, double r2, double turn) {
    return new ReverseCurve(r1, r2, 0, turn);
  }

  /** The run follows. */
  public static ReverseCurve ofRiseAndRadii(double rise, double r1, double r2) {
    return ofRiseRadiiAndStraight(rise, r1, r2, 0);
  }

  /** The run follows. */
  public static ReverseCurve ofRiseRadiiAndStraight(
      double rise, double r1, double r2, double straight) {
    requireRadii(r1, r2);
    Sizes.requirePositive("rise", rise);
    double sum = r1 + r2;
    if (rise > (sum + straight) * (1 + ROUNDING)) {
      throw Sizes.refusal(
          "a rise of %s would overhang; at most %s goes with these radii, so lower it or enlarge them"
              .formatted(Sizes.about(rise), Sizes.atMost(sum + straight)));
    }
    // The quadratic in tan(α/2), solved without cancellation.
    double root = Math.sqrt(straight * straight + rise * (2 * sum - rise));
    return new ReverseCurve(r1, r2, straight, turn(rise, straight + root));
  }

  /** Equal radii: R = (run² + rise²) / (4 rise). */
  public static ReverseCurve ofRiseAndRun(double rise, double run) {
    return ofRiseRunAndStraight(rise, run, 0);
  }

  /** Equal radii, by the straight distance between the two tangent points. */
  public static ReverseCurve ofRiseAndChord(double rise, double chord) {
    return ofRiseAndRun(rise, runOfChord(rise, chord));
  }

  /** The run that goes with a rise and the straight distance between the two tangent points. */
  public static double runOfChord(double rise, double chord) {
    Sizes.requirePositive("rise", rise);
    Sizes.requirePositive("distance between the tangent points", chord);
    if (chord <= rise) {
      throw Sizes.refusal(
          "the distance between the tangent points must be more than the rise of "
              + Sizes.about(rise));
    }
    return Math.sqrt((chord - rise) * (chord + rise));
  }

  /** The second radius follows. */
  public static ReverseCurve ofRiseRunAndFirstRadius(double rise, double run, double r1) {
    double r2 = otherRadius("first", r1, sumOfRadii(rise, run, 0));
    return new ReverseCurve(r1, r2, 0, turn(rise, run));
  }

  /** The first radius follows. */
  public static ReverseCurve ofRiseRunAndSecondRadius(double rise, double run, double r2) {
    double r1 = otherRadius("second", r2, sumOfRadii(rise, run, 0));
    return new ReverseCurve(r1, r2, 0, turn(rise, run));
  }

  /** The straight follows; none where the arcs just meet. */
  public static ReverseCurve ofRiseRunAndRadii(double rise, double run, double r1, double r2) {
    requireRadii(r1, r2);
    double most = sumOfRadii(rise, run, 0);
    double sum = r1 + r2;
    if (sum > most * (1 + ROUNDING)) {
      throw Sizes.refusal(
          "the radii add up to %s, but a rise of %s over %s has room for %s together"
              .formatted(
                  Sizes.about(sum), Sizes.about(rise), Sizes.about(run), Sizes.atMost(most)));
    }
    double straight = Math.sqrt(Math.max(0, 2 * rise * (most - sum)));
    // Radii that just meet would leave a straight of rounding only.
    double kept = most - sum <= ROUNDING * most ? 0 : straight;
    return new ReverseCurve(r1, r2, kept, turn(rise, run + kept));
  }

  /** Equal radii with a straight of the given length. */
  public static ReverseCurve ofRiseRunAndStraight(double rise, double run, double straight) {
    double radius = sumOfRadii(rise, run, straight) / 2;
    return new ReverseCurve(radius, radius, straight, turn(rise, run + straight));
  }

  /** The rise follows. */
  public static ReverseCurve ofRunAndRadii(double run, double r1, double r2) {
    requireRadii(r1, r2);
    Sizes.requirePositive("run", run);
    if (run > (r1 + r2) * (1 + ROUNDING)) {
      throw Sizes.refusal(
          "a run of %s is too long for these radii without a straight; at most %s"
              .formatted(Sizes.about(run), Sizes.atMost(r1 + r2)));
    }
    double turn = Math.toDegrees(Math.asin(Math.min(1, run / (r1 + r2))));
    return new ReverseCurve(r1, r2, 0, turn);
  }

  /** Equal radii that turn by the given degrees. */
  public static ReverseCurve ofRiseAndTurn(double rise, double turn) {
    double radius = sumOfRadiiAtTurn(rise, turn) / 2;
    return new ReverseCurve(radius, radius, 0, turn);
  }

  /** The second radius follows. */
  public static ReverseCurve ofRiseTurnAndFirstRadius(double rise, double turn, double r1) {
    double r2 = otherRadius("first", r1, sumOfRadiiAtTurn(rise, turn));
    return new ReverseCurve(r1, r2, 0, turn);
  }

  /** The first radius follows. */
  public static ReverseCurve ofRiseTurnAndSecondRadius(double rise, double turn, double r2) {
    double r1 = otherRadius("second", r2, sumOfRadiiAtTurn(rise, turn));
    return new ReverseCurve(r1, r2, 0, turn);
  }

  /** Distance in mm between the parallel tangents. */
  public double rise() {
    return rise(firstRadius) + rise(secondRadius) + straight * Degrees.sin(turn);
  }

  /** Distance in mm between the tangent points, measured along the tangents. */
  public double run() {
    return (firstRadius + secondRadius) * Degrees.sin(turn) + straight * Degrees.cos(turn);
  }

  /** Straight distance in mm between the tangent points. */
  public double chord() {
    return Math.hypot(rise(), run());
  }

  /** Length in mm of both arcs and the straight. */
  public double length() {
    return (firstRadius + secondRadius) * Math.toRadians(turn) + straight;
  }

  /** The curve from {@code start} in direction {@code degrees}, rising to the given side. */
  public Path from(Point start, double degrees, Side side) {
    Point along = Point.polar(1, degrees);
    Point up = along.left().times(side.sign());
    double sin = Degrees.sin(turn);
    Point afterFirst = start.plus(along.times(firstRadius * sin)).plus(up.times(rise(firstRadius)));
    Point beforeSecond =
        straight <= NO_STRAIGHT
            ? afterFirst
            : afterFirst
                .plus(along.times(straight * Degrees.cos(turn)))
                .plus(up.times(straight * sin));
    Point end =
        beforeSecond.plus(along.times(secondRadius * sin)).plus(up.times(rise(secondRadius)));
    Point firstCenter = start.plus(up.times(firstRadius));
    Point secondCenter = end.minus(up.times(secondRadius));
    double sweep = side.sign() * turn;
    List<Primitive> pieces = new ArrayList<>(3);
    pieces.add(new Arc(firstCenter, firstRadius, start, afterFirst, sweep));
    if (straight > NO_STRAIGHT) {
      pieces.add(new Line(afterFirst, beforeSecond));
    }
    pieces.add(new Arc(secondCenter, secondRadius, beforeSecond, end, -sweep));
    return new Path(pieces);
  }

  // r (1 − cos α), by the half angle: exact for the flat curves of long rails.
  private double rise(double radius) {
    double half = Degrees.sin(turn / 2);
    return turn == 90 ? radius : 2 * radius * half * half;
  }

  private static double turn(double rise, double runAndStraight) {
    double degrees = Math.toDegrees(2 * Math.atan2(rise, runAndStraight));
    if (degrees > 90 && degrees <= 90 * (1 + ROUNDING)) {
      return 90;
    }
    if (degrees > 90) {
      throw Sizes.refusal(
          "the curve would overhang: a rise of %s needs a run of at least %s without a straight"
              .formatted(Sizes.about(rise), Sizes.atLeast(rise)));
    }
    return degrees;
  }

  private static double sumOfRadii(double rise, double run, double straight) {
    Sizes.requirePositive("rise", rise);
    Sizes.requirePositive("run", run);
    double sum = (run * run + rise * rise - straight * straight) / (2 * rise);
    if (!(sum > 0)) {
      throw Sizes.refusal(
          "a straight of %s leaves no room for arcs; it must stay below %s"
              .formatted(Sizes.about(straight), Sizes.atMost(Math.hypot(rise, run))));
    }
    return sum;
  }

  private static double sumOfRadiiAtTurn(double rise, double turn) {
    Sizes.requirePositive("rise", rise);
    Sizes.requireTurn("turn of each arc", turn, 90);
    double half = Degrees.sin(turn / 2);
    return rise / (2 * half * half);
  }

  private static double otherRadius(String which, double radius, double sum) {
    Sizes.requirePositive(which + " radius", radius);
    if (!(radius < sum)) {
      throw Sizes.refusal(
          "a %s radius of %s leaves none for the other arc; it must stay below %s"
              .formatted(which, Sizes.about(radius), Sizes.atMost(sum)));
    }
    return sum - radius;
  }

  private static void requireRadii(double r1, double r2) {
    Sizes.requirePositive("first radius", r1);
    Sizes.requirePositive("second radius", r2);
  }
}
