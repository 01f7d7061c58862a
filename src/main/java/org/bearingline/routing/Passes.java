package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/**
 * depth per pass = min(deepest pass, share · d): equal passes through a thickness, no deeper than
 * the table of practice allows for a bit of diameter d.
 *
 * @param thickness mm to cut through
 * @param perPass mm each pass takes
 * @param depths mm from the face after each pass; the last is the thickness
 * @param rule the rule in words, with its source
 */
public record Passes(double thickness, double perPass, List<Double> depths, String rule) {

  /** More passes than this are not a way of working but a mistake in the thickness. */
  private static final int MOST = 1000;

  /** Room for rounding when a thickness is a whole number of passes. */
  private static final double ROUNDING = 1e-9;

  public Passes {
    depths = List.copyOf(depths);
  }

  /** Equal passes through {@code thickness} mm, more than 0; {@code units} are the rule's. */
  public static Passes through(double thickness, Cutter cutter, Units units) {
    Practice practice = Practice.shipped();
    List<Double> depths = equal(thickness, deepest(cutter));
    String rule =
        "Each pass takes no more than "
            + Length.print(practice.mm("deepest-pass"), units)
            + " ("
            + practice.source("deepest-pass")
            + ") nor half the bit's diameter ("
            + practice.source("share-of-diameter")
            + ").";
    return new Passes(thickness, thickness / depths.size(), depths, rule);
  }

  /** Equal passes through a thickness, none deeper than the maker's own limit; both above 0 mm. */
  public static Passes atMost(double thickness, double limit, Units units) {
    List<Double> depths = equal(thickness, limit);
    return new Passes(
        thickness,
        thickness / depths.size(),
        depths,
        "Each pass takes no more than your " + Length.print(limit, units) + ".");
  }

  /** mm that one pass of this bit takes at most. */
  public static double deepest(Cutter cutter) {
    Practice practice = Practice.shipped();
    return Math.min(
        practice.mm("deepest-pass"), practice.number("share-of-diameter") * cutter.diameter());
  }

  /**
   * The depths in mm after each of the fewest equal passes.
   *
   * @param thickness mm to cut through, more than 0
   * @param deepest mm that a pass takes at most, more than 0
   */
  public static List<Double> equal(double thickness, double deepest) {
    int count = (int) Math.min(MOST, Math.ceil(thickness / deepest - ROUNDING));
    List<Double> depths = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      depths.add(thickness * i / count);
    }
    depths.add(thickness);
    return depths;
  }
}
