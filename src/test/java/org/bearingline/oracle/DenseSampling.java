package org.bearingline.oracle;

import java.util.Optional;
import org.bearingline.outline.Region;

/**
 * Checks an offset against its definition, both ways. Forward: each point of the result lies at the
 * distance from the exact input, on the right side of it. Backward: each point the definition puts
 * on the offset lies on the result.
 *
 * <p>Backward takes only points that are certain. A point moved by d from one edge is on the offset
 * where every other edge stays at least d + {@link #CLEAR} away: then a step on along the normal
 * leaves the disc's reach. That gives up samples within sqrt(2 · d · CLEAR) of a smooth join and
 * features thinner than CLEAR, such as the seam of a slot exactly 2 d wide, and no others.
 */
public final class DenseSampling {

  /** mm by which all other edges must be farther than d from a sample of the backward check. */
  static final double CLEAR = 1e-6;

  private static final double ROUNDING = 1e-9;

  private final Edges input;
  private final double distance;
  private final int perEdge;
  private final Optional<Edges> original;

  /**
   * @param input the exact input
   * @param distance mm, positive for a dilation, negative for an erosion
   * @param perEdge samples on each edge, at least 2
   */
  public DenseSampling(Region input, double distance, int perEdge) {
    this(Edges.of(input), distance, perEdge);
  }

  public DenseSampling(Edges input, double distance, int perEdge) {
    this(input, distance, perEdge, Optional.empty());
  }

  private DenseSampling(Edges input, double distance, int perEdge, Optional<Edges> original) {
    this.input = input;
    this.distance = distance;
    this.perEdge = perEdge;
    this.original = original;
  }

  /**
   * The second step of a closing or opening, back by the same distance. A hole in the first step's
   * result that is smaller than CLEAR may be there or not: the disc fits, or it just does not. So
   * the backward check takes only places where the first step clears the original by CLEAR.
   *
   * @param original what the first step was made of
   * @param first the first step's result
   * @param distance mm of the second step, positive for a dilation, negative for an erosion
   */
  public static DenseSampling secondStep(
      Region original, Region first, double distance, int perEdge) {
    return new DenseSampling(Edges.of(first), distance, perEdge, Optional.of(Edges.of(original)));
  }

  public Deviation forward(Region result) {
    return forward(Edges.of(result));
  }

  public Deviation forward(Edges result) {
    double d = Math.abs(distance);
    Deviation worst = Deviation.NONE;
    for (int i = 0; i < result.count(); i++) {
      Edge edge = result.place(i).edge();
      for (int k = 0; k < perEdge; k++) {
        double t = k / (perEdge - 1.0);
        double x = edge.x(t);
        double y = edge.y(t);
        worst = worst.with(Math.abs(input.distance(x, y) - d), x, y);
      }
      double x = edge.x(0.5);
      double y = edge.y(0.5);
      if (input.contains(x, y) == distance > 0) {
        worst = worst.with(2 * d, x, y);
      }
    }
    return worst;
  }

  public Deviation backward(Region result) {
    return backward(Edges.of(result));
  }

  public Deviation backward(Edges result) {
    Deviation worst = Deviation.NONE;
    for (int i = 0; i < input.count(); i++) {
      worst = worst.and(alongEdge(i, result)).and(roundEnd(i, result));
    }
    return worst;
  }

  private Deviation alongEdge(int i, Edges result) {
    double d = Math.abs(distance);
    Edge edge = input.place(i).edge();
    Deviation worst = Deviation.NONE;
    // Right of travel is outside. An arc hollow towards the offset needs room for the disc.
    boolean hollow = edge.isArc() && edge.sweep() > 0 == distance < 0;
    if (hollow && edge.r() <= d + CLEAR) {
      return worst;
    }
    for (int k = 0; k < perEdge; k++) {
      double t = (k + 0.5) / perEdge;
      double normal = edge.heading(t) - Math.PI / 2;
      double x = edge.x(t) + distance * Math.cos(normal);
      double y = edge.y(t) + distance * Math.sin(normal);
      if (input.distance(x, y) >= d - ROUNDING
          && input.distanceExcept(x, y, i, -1, -1) >= d + CLEAR
          && firstStepIsClear(edge.x(t), edge.y(t), normal)) {
        worst = worst.with(result.distance(x, y), x, y);
      }
    }
    return worst;
  }

  private Deviation roundEnd(int i, Edges result) {
    double d = Math.abs(distance);
    Edges.Place place = input.place(i);
    double vx = place.edge().bx();
    double vy = place.edge().by();
    Deviation worst = Deviation.NONE;
    int steps = 4 * perEdge;
    for (int k = 0; k < steps; k++) {
      double angle = 2 * Math.PI * (k + 0.37) / steps;
      double x = vx + d * Math.cos(angle);
      double y = vy + d * Math.sin(angle);
      if (input.distance(x, y) >= d - ROUNDING
          && input.distanceExcept(x, y, i, place.after(), -1) >= d + CLEAR
          && input.contains(x, y) != distance > 0
          && firstStepIsClear(vx, vy, distance > 0 ? angle : angle + Math.PI)) {
        worst = worst.with(result.distance(x, y), x, y);
      }
    }
    return worst;
  }

  // A step on from the first step's edge, away from the sample, the original is farther than d.
  private boolean firstStepIsClear(double x, double y, double outward) {
    if (original.isEmpty()) {
      return true;
    }
    double step = distance > 0 ? -2 * CLEAR : 2 * CLEAR;
    double beyondX = x + step * Math.cos(outward);
    double beyondY = y + step * Math.sin(outward);
    return original.get().distance(beyondX, beyondY) >= Math.abs(distance) + CLEAR;
  }
}
