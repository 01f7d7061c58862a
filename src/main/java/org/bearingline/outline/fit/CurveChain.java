package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * Curves one after the other, each with its share of the parameter.
 *
 * <p>At a knot the piece after it answers, but for the direction just before it.
 */
public final class CurveChain implements Curve {

  private final List<Curve> pieces;
  private final double[] knots;
  private final List<Double> breaks;

  /**
   * @param pieces at least one, each starting where the one before ends
   * @param shares of the parameter, one to a piece, each more than 0, in any unit
   * @param cuts numbers of the pieces before which the chain is to be cut
   */
  CurveChain(List<? extends Curve> pieces, List<Double> shares, List<Integer> cuts) {
    this.pieces = List.copyOf(pieces);
    double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
    knots = new double[pieces.size() + 1];
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      knots[i] = sum / whole;
      sum += shares.get(i);
    }
    knots[pieces.size()] = 1;
    List<Double> at = new ArrayList<>();
    cuts.forEach(piece -> at.add(knots[piece]));
    for (int i = 0; i < pieces.size(); i++) {
      for (double t : pieces.get(i).breaks()) {
        at.add(knots[i] + t * width(i));
      }
    }
    breaks = at.stream().sorted().toList();
  }

  /** Curves that run on smoothly into each other, each with a share like its chords'. */
  public static CurveChain smooth(List<Curve> pieces) {
    List<Double> shares = new ArrayList<>();
    for (Curve piece : pieces) {
      Point middle = piece.pointAt(0.5);
      shares.add(piece.pointAt(0).distanceTo(middle) + middle.distanceTo(piece.pointAt(1)));
    }
    return new CurveChain(pieces, shares, List.of());
  }

  @Override
  public Point pointAt(double t) {
    int i = after(t);
    return pieces.get(i).pointAt(local(t, i));
  }

  @Override
  public Point velocityAt(double t) {
    int i = after(t);
    return pieces.get(i).velocityAt(local(t, i)).times(1 / width(i));
  }

  @Override
  public Point accelerationAt(double t) {
    int i = after(t);
    return pieces.get(i).accelerationAt(local(t, i)).times(1 / (width(i) * width(i)));
  }

  @Override
  public Point directionAfter(double t) {
    int i = after(t);
    return pieces.get(i).directionAfter(local(t, i));
  }

  @Override
  public Point directionBefore(double t) {
    int i = after(t);
    int before = t == knots[i] && i > 0 ? i - 1 : i;
    return pieces.get(before).directionBefore(local(t, before));
  }

  @Override
  public List<Double> breaks() {
    return breaks;
  }

  @Override
  public int stretches() {
    return pieces.stream().mapToInt(Curve::stretches).sum();
  }

  private int after(double t) {
    int found = Arrays.binarySearch(knots, t);
    int piece = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(pieces.size() - 1, piece));
  }

  private double local(double t, int i) {
    return t == knots[i + 1] ? 1 : (t - knots[i]) / width(i);
  }

  private double width(int i) {
    return knots[i + 1] - knots[i];
  }
}
