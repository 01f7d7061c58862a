package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;

/** Curves that run on smoothly into each other, as one. */
final class JoinedCurve implements Curve {

  private final List<Curve> parts;
  private final double[] knots;

  /** The parts in order, each with a share of the parameter like its chord's. */
  JoinedCurve(List<Curve> parts) {
    this.parts = List.copyOf(parts);
    knots = new double[parts.size() + 1];
    for (int i = 0; i < parts.size(); i++) {
      Curve part = parts.get(i);
      double way =
          part.pointAt(0).distanceTo(part.pointAt(0.5))
              + part.pointAt(0.5).distanceTo(part.pointAt(1));
      knots[i + 1] = knots[i] + way;
    }
    double whole = knots[parts.size()];
    for (int i = 0; i <= parts.size(); i++) {
      knots[i] /= whole;
    }
    knots[parts.size()] = 1;
  }

  private int part(double t) {
    int found = Arrays.binarySearch(knots, t);
    int at = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(parts.size() - 1, at));
  }

  private double local(double t, int i) {
    return t == knots[i + 1] ? 1 : (t - knots[i]) / width(i);
  }

  private double width(int i) {
    return knots[i + 1] - knots[i];
  }

  @Override
  public Point pointAt(double t) {
    int i = part(t);
    return parts.get(i).pointAt(local(t, i));
  }

  @Override
  public Point velocityAt(double t) {
    int i = part(t);
    return parts.get(i).velocityAt(local(t, i)).times(1 / width(i));
  }

  @Override
  public Point accelerationAt(double t) {
    int i = part(t);
    return parts.get(i).accelerationAt(local(t, i)).times(1 / (width(i) * width(i)));
  }

  @Override
  public Point directionAfter(double t) {
    int i = part(t);
    return parts.get(i).directionAfter(local(t, i));
  }

  @Override
  public Point directionBefore(double t) {
    int i = part(t);
    int before = t == knots[i] && i > 0 ? i - 1 : i;
    return parts.get(before).directionBefore(local(t, before));
  }

  @Override
  public List<Double> breaks() {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      for (double t : parts.get(i).breaks()) {
        all.add(knots[i] + t * width(i));
      }
    }
    return all;
  }

  @Override
  public int stretches() {
    return parts.stream().mapToInt(Curve::stretches).sum();
  }
}
