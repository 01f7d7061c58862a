package org.bearingline.routing;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.wood.Movement;

/**
 * How one side of a panel sits, measured on the moved panel: its edge's points p go to p + ε ((p −
 * m)·a) a, and their depth in the member's wood and their distance to its groove's floor are taken
 * there.
 */
final class PanelFit {

  private static final int SAMPLES = 64;

  private final List<Primitive> edge;
  private final Region wood;
  private final Region floor;
  private final Point middle;
  private final Point across;

  PanelFit(List<Primitive> edge, FrameSide member, Point middle, Point across) {
    this.edge = edge;
    this.wood = member.wood();
    this.floor = member.beyond(0);
    this.middle = middle;
    this.across = across;
  }

  /**
   * Least and most along a side.
   *
   * @param seat least depth in the groove
   * @param deepest most depth in the groove
   * @param gap least distance to the floor
   */
  record Extremes(double seat, double deepest, double gap) {
    PanelSeat.Fit fit() {
      return new PanelSeat.Fit(seat, gap);
    }
  }

  Extremes driest(Movement movement) {
    return at(-movement.shrink());
  }

  Extremes assembled() {
    return at(0);
  }

  Extremes dampest(Movement movement) {
    return at(movement.growth());
  }

  private Extremes at(double change) {
    double seat = Double.POSITIVE_INFINITY;
    double deepest = Double.NEGATIVE_INFINITY;
    double gap = Double.POSITIVE_INFINITY;
    for (Primitive piece : edge) {
      for (int i = 0; i <= SAMPLES; i++) {
        Point p = piece.pointAt((double) i / SAMPLES);
        Point moved = p.plus(across.times(change * p.minus(middle).dot(across)));
        double in = FrameSide.depthIn(wood, moved);
        seat = Math.min(seat, in);
        deepest = Math.max(deepest, in);
        gap = Math.min(gap, -FrameSide.depthIn(floor, moved));
      }
    }
    return new Extremes(seat, deepest, gap);
  }
}
