package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Arc;
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

  /** Radians under which a drawn joint was smooth already. */
  private static final double SMOOTH = 2e-5;

  static CleanChain of(Chain chain, double tolerance, double sharpCorner) {
    CourseBuilder.Built built =
        CourseBuilder.of(chain.pieces(), chain.closed(), tolerance, sharpCorner);
    if (built.course().size < 3 && (chain.closed() || built.course().size < 2)) {
      return new CleanChain(
          chain, built.course(), List.of(), Moves.NONE, built.doubledPoints(), 0, 0);
    }
    ChainFit.Fitted fitted = ChainFit.of(built.course(), tolerance, sharpCorner);
    Course course = fitted.course();
    List<Primitive> pieces = Corners.joined(course, fitted.groups(), tolerance);
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
    Moves.Move move = Moves.of(course, pieces);
    if (built.toldMove() > move.largest()) {
      move = new Moves.Move(built.toldMove(), built.toldMoveAt());
    }
    return new CleanChain(
        chain, course, pieces, move, built.doubledPoints(), joints, Math.toDegrees(largest));
  }

  /** Whether something is enclosed. */
  boolean isLoop(double tolerance) {
    if (!chain.closed() || pieces.isEmpty()) {
      return false;
    }
    if (pieces.size() == 1) {
      return pieces.get(0) instanceof Arc arc && arc.isFullCircle();
    }
    return pieces.get(0).start().equals(pieces.get(pieces.size() - 1).end())
        && Math.abs(area()) > tolerance * tolerance;
  }

  private double area() {
    double doubled = 0;
    for (Primitive piece : pieces) {
      doubled += piece.doubledSweptArea(pieces.get(0).start());
    }
    return doubled / 2;
  }
}
