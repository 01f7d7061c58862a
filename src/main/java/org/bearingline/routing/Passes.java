package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/**
 * depth per pass = min(deepest pass, share · d): even passes through a thickness, no deeper than
 * the table of practice allows for a bit of diameter d.
 *
 * @param thickness mm to cut through
 * @param perPass mm each pass takes, the first perhaps less
 * @param depths mm from the face after each pass; the last is the thickness
 * @param rule the rule in words, with its source
 */
public record Passes(double thickness, double perPass, List<Double> depths, String rule) {

  /** More passes than this are not a way of working but a mistake in the thickness. */
  private static final int MOST = 1000;

  /** A spacer is a scrap of this thickness or a whole number of them. */
  private static final double MM_STEP = 0.5;

  private static final double INCH_STEP = 25.4 / 32;

  /** Room for rounding when a thickness is a whole number of passes. */
  private static final double ROUNDING = 1e-9;

  public Passes {
    depths = List.copyOf(depths);
  }

  /** Even passes through {@code thickness} mm, more than 0; {@code units} are the rule's. */
  public static Passes through(double thickness, Cutter cutter, Units units) {
    Practice practice = Practice.shipped();
    List<Double> depths = inSteps(thickness, deepest(cutter), units);
    String rule =
        "Each pass takes no more than "
            + Length.print(practice.mm("deepest-pass", units), units)
            + " ("
            + practice.source("deepest-pass")
            + ") nor half the bit's diameter ("
            + practice.source("share-of-diameter")
            + ").";
    return new Passes(thickness, largest(depths), depths, rule);
  }

  /** Even passes through a thickness, none deeper than the maker's own limit; both above 0 mm. */
  public static Passes atMost(double thickness, double limit, Units units) {
    List<Double> depths = inSteps(thickness, limit, units);
    return new Passes(
        thickness,
        largest(depths),
        depths,
        "Each pass takes no more than your " + Length.print(limit, units) + ".");
  }

  /** Whether the first pass takes as much as the others. */
  public boolean isEven() {
    return Math.abs(depths.get(0) - perPass) < ROUNDING;
  }

  /** All but the first pass are alike, and none is deeper. */
  private static double largest(List<Double> depths) {
    int last = depths.size() - 1;
    return last == 0 ? depths.get(0) : depths.get(last) - depths.get(last - 1);
  }

  /** mm that one pass of this bit takes at most. */
  public static double deepest(Cutter cutter) {
    Practice practice = Practice.shipped();
    return Math.min(
        practice.mm("deepest-pass"), practice.number("share-of-diameter") * cutter.diameter());
  }

  /**
   * The depths in mm after each of the fewest passes. All but the first take the same round amount
   * where one is possible (whole 1/32 in, or half millimetres), so that the spacers under a stop
   * are round too; the first takes what is over. A thickness that is round itself gets one pass
   * more where the fewest would not be round: nobody has spacers of 3.14 mm.
   *
   * @param thickness mm to cut through, more than 0
   * @param deepest mm that a pass takes at most, more than 0
   */
  public static List<Double> inSteps(double thickness, double deepest, Units units) {
    double grain = units == Units.MM ? MM_STEP : INCH_STEP;
    int fewest = (int) Math.min(MOST, Math.ceil(thickness / deepest - ROUNDING));
    boolean more =
        fewest < MOST
            && isWhole(thickness / grain)
            && !isRound(thickness, fewest, deepest, grain)
            && isRound(thickness, fewest + 1, deepest, grain);
    int count = more ? fewest + 1 : fewest;
    double step =
        isRound(thickness, count, deepest, grain)
            ? roundStep(thickness, count, grain)
            : thickness / count;
    List<Double> depths = new ArrayList<>();
    for (int left = count - 1; left > 0; left--) {
      depths.add(thickness - step * left);
    }
    depths.add(thickness);
    return depths;
  }

  private static boolean isWhole(double steps) {
    return Math.abs(steps - Math.rint(steps)) < 1e-6;
  }

  private static double roundStep(double thickness, int count, double grain) {
    return Math.ceil(thickness / count / grain - ROUNDING) * grain;
  }

  /** Whether that many passes can take a round step each, and the first what is over. */
  private static boolean isRound(double thickness, int count, double deepest, double grain) {
    double step = roundStep(thickness, count, grain);
    return step <= deepest + ROUNDING && step * (count - 1) < thickness - ROUNDING;
  }
}
