package org.bearingline.outline;

import java.util.ArrayList;
import java.util.List;

/** One line parallel to x through an outline, and the chords it has there. */
public final class ScanLine {

  /** A line this near to an end or crown of a primitive, in mm, is moved off it. */
  private static final double CLEAR = 1e-9;

  /** How many heights are tried within half a step. */
  private static final int MOVES = 97;

  private ScanLine() {}

  /**
   * The chords at height {@code y}, from left to right. Where the line would touch an end or the
   * crown of an arc it is moved up, by less than half a {@code step}, so that every crossing counts
   * once.
   *
   * @return pairs of x, each from a left end to a right end
   */
  public static List<double[]> chords(Outline wood, double y, double step) {
    for (int move = 0; move < MOVES; move++) {
      double height = y + move * step / (2 * MOVES);
      List<Double> crossings = crossings(wood, height);
      // An odd count is a line through a joint whose ends agree only to rounding.
      if (!touches(wood, height) && crossings.size() % 2 == 0) {
        List<double[]> chords = new ArrayList<>();
        for (int i = 0; i < crossings.size(); i += 2) {
          chords.add(new double[] {crossings.get(i), crossings.get(i + 1)});
        }
        return chords;
      }
    }
    return List.of();
  }

  private static List<Double> crossings(Outline wood, double height) {
    List<Double> crossings = new ArrayList<>();
    for (Loop loop : wood.loops()) {
      for (Primitive piece : loop.primitives()) {
        crossings.addAll(piece.match(line -> cross(line, height), arc -> cross(arc, height)));
      }
    }
    crossings.sort(null);
    return crossings;
  }

  private static boolean touches(Outline wood, double y) {
    for (Loop loop : wood.loops()) {
      for (Primitive piece : loop.primitives()) {
        double at = y;
        boolean crown =
            piece.match(
                line -> false,
                arc ->
                    isAt(arc.center().y() + arc.radius(), at)
                        || isAt(arc.center().y() - arc.radius(), at));
        if (crown || isAt(piece.start().y(), y)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isAt(double height, double y) {
    return Math.abs(height - y) <= CLEAR;
  }

  private static List<Double> cross(Line line, double y) {
    double from = line.start().y() - y;
    double to = line.end().y() - y;
    if (from > 0 == to > 0) {
      return List.of();
    }
    return List.of(line.pointAt(from / (from - to)).x());
  }

  private static List<Double> cross(Arc arc, double y) {
    double rise = y - arc.center().y();
    if (Math.abs(rise) >= arc.radius()) {
      return List.of();
    }
    double half = Math.sqrt((arc.radius() - rise) * (arc.radius() + rise));
    List<Double> found = new ArrayList<>();
    for (double side : new double[] {-half, half}) {
      if (arc.covers(Math.toDegrees(Math.atan2(rise, side)))) {
        found.add(arc.center().x() + side);
      }
    }
    return found;
  }
}
