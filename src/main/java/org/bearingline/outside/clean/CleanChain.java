package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Primitive;

/**
 * A chain made clean.
 *
 * @param chain as drawn
 * @param course its samples, starting where the pieces start
 * @param pieces clean lines and arcs
 * @param move how far they lie from the drawn line at most
 * @param doubledPoints points dropped because they fell on the one before
 * @param jointsMadeTangent joints of the drawing that turned a little and are gone
 * @param largestJointTurn the largest such turn in degrees
 */
record CleanChain(
    Chain chain,
    Course course,
    List<Primitive> pieces,
    Moves.Move move,
    int doubledPoints,
    int jointsMadeTangent,
    double largestJointTurn) {

  /** Tolerances beyond which a fitted line has lost its way, and chords are the truth. */
  private static final double ASTRAY = 3;

  /** Shares of the tolerance that are asked for besides where points lie off by themselves. */
  private static final double[] OTHERWISE = {0.8, 1.25};

  /** How far, in tolerances, a simpler line may lie from single points of a noisy one. */
  private static final double NOISE_MOVE = 1.25;

  /** Samples beyond which further tries take too long. */
  private static final int MOST_OTHERWISE = 100_000;

  /** An arc that rises less than this above its chord, in mm, is straight. */
  private static final double FLAT = 1e-5;

  /** Radians under which a drawn joint was smooth already. */
  private static final double SMOOTH = 2e-5;

  CleanChain {
    pieces = pieces.stream().map(CleanChain::straightened).toList();
  }

  /** No painter and no machine draws an arc of a thousand kilometres well. */
  private static Primitive straightened(Primitive piece) {
    if (piece instanceof Arc arc && !arc.isFullCircle() && Math.abs(arc.sweep()) < 90) {
      double quarter = Math.sin(Math.toRadians(arc.sweep()) / 4);
      double rise = 2 * arc.radius() * quarter * quarter;
      return rise < FLAT ? new Line(arc.start(), arc.end()) : arc;
    }
    return piece;
  }

  /**
   * Makes a chain clean.
   *
   * @param noisy whether its points lie off the line by themselves: then less cannot be asked for
   */
  static CleanChain of(Chain chain, double tolerance, double sharpCorner, boolean noisy) {
    CourseBuilder.Built built =
        CourseBuilder.of(chain.pieces(), chain.closed(), tolerance, sharpCorner);
    if (built.course().size < 3 && (chain.closed() || built.course().size < 2)) {
      return new CleanChain(
          chain, built.course(), List.of(), Moves.NONE, built.doubledPoints(), 0, 0);
    }
    Fit best = fit(built.course(), tolerance, tolerance, sharpCorner, noisy);
    if (noisy && built.course().size <= MOST_OTHERWISE) {
      // Where the seam between two pieces falls hangs on the noise, and an unlucky one splits them:
      // asked a little otherwise, it falls elsewhere.
      for (double share : OTHERWISE) {
        Fit next = fit(built.course(), share * tolerance, tolerance, sharpCorner, true);
        best = next.isSimplerThan(best, NOISE_MOVE * tolerance) ? next : best;
      }
    }
    ChainFit.Fitted fitted = best.fitted();
    Course course = fitted.course();
    List<Primitive> pieces = best.pieces();
    Moves.Move move = best.move();
    boolean[] stillCorner = new boolean[course.size];
    for (Group group : fitted.groups()) {
      if (!group.ring()) {
        stillCorner[group.from()] = true;
        stillCorner[group.to()] = true;
      }
    }
    int joints = 0;
    double largest = 0;
    for (int i = 0; i < course.size - (course.closed ? 1 : 0); i++) {
      if (course.joint[i] > SMOOTH && !stillCorner[i]) {
        joints++;
        largest = Math.max(largest, course.joint[i]);
      }
    }
    if (built.toldMove() > move.largest()) {
      move = new Moves.Move(built.toldMove(), built.toldMoveAt());
    }
    return new CleanChain(
        chain, course, pieces, move, built.doubledPoints(), joints, Math.toDegrees(largest));
  }

  /** One try. */
  private record Fit(ChainFit.Fitted fitted, List<Primitive> pieces, Moves.Move move) {

    boolean isSimplerThan(Fit other, double farthest) {
      return pieces.size() < other.pieces.size()
          && move.largest() <= Math.max(farthest, other.move.largest());
    }
  }

  private static Fit fit(
      Course course, double asked, double tolerance, double sharpCorner, boolean noisy) {
    ChainFit.Fitted fitted = ChainFit.of(course, asked, sharpCorner);
    return noisy
        ? traced(fitted, asked, tolerance, sharpCorner)
        : mended(fitted, tolerance, sharpCorner);
  }

  // Single points may lie off by more; where the whole line does, it has lost its way.
  private static Fit traced(
      ChainFit.Fitted fitted, double asked, double tolerance, double sharpCorner) {
    Course course = fitted.course();
    double astray = ASTRAY * tolerance;
    Mending.Mended mended = Mending.ofNoisy(course, fitted.groups(), asked, astray, sharpCorner);
    List<Primitive> pieces = mended.pieces();
    return new Fit(new ChainFit.Fitted(course, mended.groups()), pieces, Moves.of(course, pieces));
  }

  private static Fit mended(ChainFit.Fitted fitted, double tolerance, double sharpCorner) {
    Course course = fitted.course();
    Mending.Mended mended = Mending.of(course, fitted.groups(), tolerance, sharpCorner);
    List<Primitive> pieces = mended.pieces();
    Moves.Move move = Moves.of(course, pieces);
    List<Primitive> fewer = course.closed ? Crumbs.without(pieces, tolerance, sharpCorner) : pieces;
    if (fewer.size() < pieces.size()) {
      Moves.Move moved = Moves.of(course, fewer);
      if (moved.largest() <= Math.max(tolerance, move.largest())) {
        pieces = fewer;
        move = moved;
      }
    }
    return new Fit(new ChainFit.Fitted(course, mended.groups()), pieces, move);
  }

  /** The same chain as other pieces. */
  CleanChain with(List<Primitive> others) {
    return new CleanChain(
        chain,
        course,
        others,
        Moves.of(course, others),
        doubledPoints,
        jointsMadeTangent,
        largestJointTurn);
  }

  /** Whether something is enclosed. */
  boolean isLoop(double tolerance) {
    if (!chain.closed() || pieces.isEmpty()) {
      return false;
    }
    if (pieces.size() == 1) {
      return pieces.get(0) instanceof Arc arc && arc.isFullCircle();
    }
    // A figure of eight has no area either, but is a fault to be told.
    return pieces.get(0).start().equals(pieces.get(pieces.size() - 1).end())
        && (pieces.size() > 2 || Math.abs(area()) > tolerance * tolerance);
  }

  private double area() {
    double doubled = 0;
    for (Primitive piece : pieces) {
      doubled += piece.doubledSweptArea(pieces.get(0).start());
    }
    return doubled / 2;
  }
}
