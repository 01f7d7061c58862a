package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Point;

/**
 * A part of a curve as a curve of its own, its parameter from 0 to 1.
 *
 * @param whole the curve
 * @param from parameter of the whole at which the part starts, in [0, 1)
 * @param to parameter of the whole at which it ends, in ({@code from}, 1]
 */
public record CurvePart(Curve whole, double from, double to) implements Curve {

  public CurvePart {
    if (!(0 <= from && from < to && to <= 1)) {
      throw new IllegalArgumentException("no part of a curve from " + from + " to " + to);
    }
  }

  private double at(double t) {
    return t == 1 ? to : from + t * (to - from);
  }

  @Override
  public Point pointAt(double t) {
    return whole.pointAt(at(t));
  }

  @Override
  public Point velocityAt(double t) {
    return whole.velocityAt(at(t)).times(to - from);
  }

  @Override
  public Point accelerationAt(double t) {
    return whole.accelerationAt(at(t)).times((to - from) * (to - from));
  }

  @Override
  public List<Double> breaks() {
    return whole.breaks().stream()
        .filter(t -> t > from && t < to)
        .map(t -> (t - from) / (to - from))
        .filter(t -> t > 0 && t < 1)
        .toList();
  }

  @Override
  public int stretches() {
    return Math.max(1, (int) Math.ceil(whole.stretches() * (to - from)));
  }

  @Override
  public Point directionAfter(double t) {
    return whole.directionAfter(at(t));
  }

  @Override
  public Point directionBefore(double t) {
    return whole.directionBefore(at(t));
  }
}
