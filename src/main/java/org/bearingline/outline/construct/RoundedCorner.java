package org.bearingline.outline.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A corner between two neighbours replaced by an arc tangent to both.
 *
 * @param before what is left of the piece before; empty where the arc takes all of it
 * @param arc the rounding
 * @param after what is left of the piece after; empty where the arc takes all of it
 */
public record RoundedCorner(Optional<Primitive> before, Arc arc, Optional<Primitive> after) {

  /** Sine of the turn below which two neighbours run on smoothly or fold back. */
  private static final double SMOOTH = 1e-9;

  /**
   * The largest radius asked for, in mm. Between pieces that bend away from the corner any radius
   * fits; beyond a kilometre it is a straight to any shop.
   */
  private static final double LARGEST = 1e6;

  /**
   * Rounds the corner where {@code before} ends and {@code after} starts; radius in mm, more than
   * 0. Fails where there is no corner, or where the radius does not fit, naming the largest that
   * does.
   */
  public static RoundedCorner of(Primitive before, Primitive after, double radius) {
    Sizes.requirePositive("radius of the rounding", radius);
    Side side = side(before, after);
    return fitted(before, after, side, radius)
        .orElseThrow(
            () ->
                Sizes.refusal(
                    "a radius of %s does not fit this corner; the largest that does is %s"
                        .formatted(
                            Sizes.about(radius), Sizes.atMost(largest(before, after, side)))));
  }

  /** The largest radius in mm that fits, up to a kilometre; fails where there is no corner. */
  public static double largestRadius(Primitive before, Primitive after) {
    return largest(before, after, side(before, after));
  }

  /** The pieces in order: one to three. */
  public List<Primitive> primitives() {
    List<Primitive> pieces = new ArrayList<>(3);
    before.ifPresent(pieces::add);
    pieces.add(arc);
    after.ifPresent(pieces::add);
    return List.copyOf(pieces);
  }

  private static Side side(Primitive before, Primitive after) {
    Point in = before.tangentAt(1);
    Point out = after.tangentAt(0);
    double turn = in.cross(out);
    if (Math.abs(turn) > SMOOTH) {
      return turn > 0 ? Side.LEFT : Side.RIGHT;
    }
    throw Sizes.refusal(
        in.dot(out) > 0
            ? "there is no corner to round here: the two pieces already run on smoothly"
            : "this corner folds straight back, so no arc rounds it");
  }

  // Grown until it no longer fits, then halved down to the last bit.
  private static double largest(Primitive before, Primitive after, Side side) {
    double fits = 0;
    double next = 1e-6 * Math.min(before.length(), after.length());
    while (fits < LARGEST && fitted(before, after, side, next).isPresent()) {
      fits = next;
      next = Math.min(2 * next, LARGEST);
    }
    double tooLarge = next;
    for (int i = 0; i < 60 && tooLarge - fits > Math.ulp(tooLarge); i++) {
      double middle = (fits + tooLarge) / 2;
      if (fitted(before, after, side, middle).isPresent()) {
        fits = middle;
      } else {
        tooLarge = middle;
      }
    }
    return fits;
  }

  /** The rounding that takes least from the piece before, among the circles that touch both. */
  private static Optional<RoundedCorner> fitted(
      Primitive before, Primitive after, Side side, double radius) {
    if (radius > LARGEST) {
      return Optional.empty();
    }
    RoundedCorner best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Carrier a : Carrier.ofTouchingCenters(before, radius, side)) {
      for (Carrier b : Carrier.ofTouchingCenters(after, radius, side)) {
        for (Point center : Carrier.meetings(a, b)) {
          Touch leaving = Touch.of(before, center);
          Touch arriving = Touch.of(after, center);
          double taken = (1 - leaving.share()) * before.length();
          if (leaving.onPiece() && arriving.onPiece() && taken < least) {
            Optional<RoundedCorner> corner =
                between(before, leaving, after, arriving, center, radius, side);
            least = corner.isPresent() ? taken : least;
            best = corner.orElse(best);
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static Optional<RoundedCorner> between(
      Primitive before,
      Touch leaving,
      Primitive after,
      Touch arriving,
      Point center,
      double radius,
      Side side) {
    Point from = leaving.takesAll(0) ? before.start() : leaving.point();
    Point to = arriving.takesAll(1) ? after.end() : arriving.point();
    double turn = Degrees.of(to.minus(center)) - Degrees.of(from.minus(center));
    double sweep = side.sign() * Degrees.normalised(side.sign() * turn);
    // A corner turns by less than half a circle; what needs more has passed a piece's far end.
    if (sweep == 0 || Math.abs(sweep) >= 270) {
      return Optional.empty();
    }
    Optional<Primitive> first =
        leaving.takesAll(0)
            ? Optional.empty()
            : Optional.of(before.part(0, leaving.share()).withEnds(before.start(), from));
    Optional<Primitive> last =
        arriving.takesAll(1)
            ? Optional.empty()
            : Optional.of(after.part(arriving.share(), 1).withEnds(to, after.end()));
    return Optional.of(new RoundedCorner(first, new Arc(center, radius, from, to, sweep), last));
  }

  /**
   * Where a circle touches a piece.
   *
   * @param share of the piece's length
   * @param length of the piece in mm
   * @param point the touching point, within the piece
   * @param miss how far in mm beyond the ends of the piece the circle really touches
   */
  private record Touch(double share, double length, Point point, double miss) {

    static Touch of(Primitive piece, Point center) {
      double share = piece.nearestShare(center);
      Point point = piece.pointAt(share);
      Point foot =
          piece.match(
              line -> {
                Point along = line.tangentAt(0);
                return line.start().plus(along.times(center.minus(line.start()).dot(along)));
              },
              arc -> arc.center().plus(center.minus(arc.center()).unit().times(arc.radius())));
      return new Touch(share, piece.length(), point, point.distanceTo(foot));
    }

    boolean onPiece() {
      return miss <= slack();
    }

    /** Whether the touching point is, but for rounding, the end at {@code endShare}. */
    boolean takesAll(double endShare) {
      return Math.abs(share - endShare) * length <= slack();
    }

    private double slack() {
      return Loop.JOIN_TOLERANCE * Math.max(1, length);
    }
  }
}
