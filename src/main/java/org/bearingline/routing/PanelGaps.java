package org.bearingline.routing;

import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.wood.Movement;

/**
 * The gap that a side of a panel needs to its groove's floor at assembly.
 *
 * <p>The panel is held at the middle m, so a point p of its edge moves by ε ((p − m)·a) a, with a
 * the unit vector across the fibres and ε from −shrink to growth. With the edge's normal n into the
 * frame, k = a·n, o the frame's edge and d the groove's depth, the panel's edge o + (d − c) n comes
 * nearer to the floor by ε (σ + (d − c) k²), σ = ((o − m)·a) k. Left over shall be at least b, so c
 * = max (b + ε (σ + d k²)) / (1 + ε k²) over the edge and both ends of ε. For a straight stile that
 * is half the growth of the panel plus b.
 */
final class PanelGaps {

  /** Places looked at on each piece of a shaped edge. */
  private static final int SAMPLES = 64;

  private final FrameOpening opening;
  private final PanelSettings settings;
  private final Movement movement;

  PanelGaps(FrameOpening opening, PanelSettings settings, Movement movement) {
    this.opening = opening;
    this.settings = settings;
    this.movement = movement;
  }

  /** Where the panel is held: the middle of the rails, or of the stiles. */
  static Point middle(FrameOpening opening) {
    return new Point(opening.width() / 2, opening.height() / 2);
  }

  /** mm, 0 or more. */
  double of(FrameSide side) {
    boolean across = isAcross(side.side());
    if (across && settings.acrossGap().isPresent()) {
      return settings.acrossGap().getAsDouble();
    }
    boolean startsFree = across && settings.species().solid();
    double least = startsFree ? settings.startGap() : settings.alongGap();
    double most = least;
    for (Primitive piece : side.inner().primitives()) {
      for (int i = 0; i <= SAMPLES; i++) {
        double share = (double) i / SAMPLES;
        most = Math.max(most, needed(piece, share, least, movement.growth()));
        most = Math.max(most, needed(piece, share, least, -movement.shrink()));
      }
    }
    return most;
  }

  /** Whether the panel swells towards a side. */
  private boolean isAcross(BoardSide side) {
    return side.outward().dot(settings.fibres().across()) != 0;
  }

  private double needed(Primitive piece, double share, double least, double change) {
    Point a = settings.fibres().across();
    double k = a.dot(piece.tangentAt(share).left());
    double off = piece.pointAt(share).minus(middle(opening)).dot(a) * k;
    return (least + change * (off + settings.slot().depth() * k * k)) / (1 + change * k * k);
  }
}
