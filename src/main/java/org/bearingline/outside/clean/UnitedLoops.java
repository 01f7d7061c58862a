package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.StrokePiece;

/**
 * Makes chains of the loops of united shapes. Where edges drawn on one another leave a step no
 * higher than the tolerance, or meet at next to no angle, the loop is made clean once more; else it
 * stays to the last bit what the union gave.
 */
final class UnitedLoops {

  /** Share of the tolerance that is left at least for cleaning once more. */
  private static final double LEAST_ROOM = 0.25;

  /** Radians under which a joint is smooth. */
  private static final double SMOOTH = 2e-6;

  private final double tolerance;
  private final double sharp;
  private final double gap;
  private final Moves.Move moved;
  private final int doubledPoints;
  private final int joints;
  private final double largestJoint;
  private final List<CleanChain> chains = new ArrayList<>();

  /**
   * @param replaced the chains of all shapes, united or not
   * @param laid mm by which one was moved since
   */
  UnitedLoops(List<CleanChain> replaced, double laid, double tolerance, CleaningSettings settings) {
    this.tolerance = tolerance;
    sharp = settings.sharpCorner();
    gap = settings.gap();
    Moves.Move most = Moves.NONE;
    int points = 0;
    int tangent = 0;
    double turn = 0;
    for (CleanChain chain : replaced) {
      most = chain.move().largest() > most.largest() ? chain.move() : most;
      points += chain.doubledPoints();
      tangent += chain.jointsMadeTangent();
      turn = Math.max(turn, chain.largestJointTurn());
    }
    moved = new Moves.Move(most.largest() + laid, most.at());
    doubledPoints = points;
    joints = tangent;
    largestJoint = turn;
  }

  /** The chains so far; the first has the counts of all that were replaced. */
  List<CleanChain> chains() {
    return chains;
  }

  /** Adds a loop; only one of several shapes may need to be made clean. */
  void add(Loop loop, String source, int figure, boolean united) {
    List<StrokePiece> drawn = loop.primitives().stream().map(UnitedLoops::piece).toList();
    Chain chain = new Chain(drawn, true, source, figure);
    CleanChain clean = united && isRough(loop) ? smoothed(chain, loop) : null;
    if (clean == null) {
      Course course = CourseBuilder.of(drawn, true, tolerance, sharp).course();
      clean = new CleanChain(chain, course, loop.primitives(), Moves.NONE, 0, 0, 0);
    }
    chains.add(chains.isEmpty() ? counted(clean) : clean);
  }

  // Each way is at most the sum of both, so no more is promised than holds.
  private CleanChain counted(CleanChain clean) {
    Moves.Move far = clean.move().largest() > 0 ? clean.move() : moved;
    return new CleanChain(
        clean.chain(),
        clean.course(),
        clean.pieces(),
        new Moves.Move(clean.move().largest() + moved.largest(), far.at()),
        doubledPoints,
        joints + clean.jointsMadeTangent(),
        Math.max(largestJoint, clean.largestJointTurn()));
  }

  private boolean isRough(Loop loop) {
    return loop.primitives().stream().anyMatch(piece -> piece.length() <= 2 * tolerance)
        || slightTurns(loop) > 0;
  }

  private int slightTurns(Loop loop) {
    int n = loop.size();
    int slight = 0;
    for (int i = 0; i < n && n > 1; i++) {
      Primitive next = loop.primitives().get((i + 1) % n);
      double turn = Joints.bend(loop.primitives().get(i).tangentAt(1), next.tangentAt(0));
      slight += turn > SMOOTH && turn <= Math.toRadians(sharp) ? 1 : 0;
    }
    return slight;
  }

  // Null where it would be no better.
  private CleanChain smoothed(Chain chain, Loop loop) {
    List<Primitive> tidy = FewerSteps.of(loop.primitives(), tolerance, sharp);
    Course drawn = CourseBuilder.of(chain.pieces(), true, tolerance, sharp).course();
    List<StrokePiece> pieces =
        new ChainJoints(gap, tolerance)
            .closed(tidy.stream().map(UnitedLoops::piece).toList(), false);
    double room = Math.max(tolerance - moved.largest(), LEAST_ROOM * tolerance);
    CleanChain best = null;
    if (!pieces.isEmpty()) {
      Chain met = new Chain(pieces, true, chain.source(), chain.figure());
      best = better(CleanChain.of(met, room, sharp, false), chain, drawn, loop, room);
    }
    if (tidy.size() < loop.size() && (best == null || tidy.size() < best.pieces().size())) {
      CleanChain only = new CleanChain(chain, drawn, tidy, Moves.NONE, 0, 0, 0);
      CleanChain better = better(only, chain, drawn, loop, room);
      best = better == null ? best : better;
    }
    return best;
  }

  private CleanChain better(CleanChain clean, Chain chain, Course drawn, Loop loop, double room) {
    if (!clean.isLoop(tolerance) || clean.pieces().size() > loop.size()) {
      return null;
    }
    Moves.Move move = Moves.of(drawn, clean.pieces());
    Loop smooth = new Loop(clean.pieces());
    boolean better = smooth.size() < loop.size() || slightTurns(smooth) < slightTurns(loop);
    boolean sound =
        OutlineCheck.crossings(List.of(smooth)).size()
            <= OutlineCheck.crossings(List.of(loop)).size();
    if (!better || !sound || move.largest() > room) {
      return null;
    }
    return new CleanChain(
        chain,
        clean.course(),
        clean.pieces(),
        move,
        0,
        clean.jointsMadeTangent(),
        clean.largestJointTurn());
  }

  private static StrokePiece piece(Primitive primitive) {
    return new StrokePiece.Plain(primitive);
  }
}
