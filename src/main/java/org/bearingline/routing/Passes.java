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
    double deepest = practice.mm("deepest-pass");
    double share = practice.number("share-of-diameter") * cutter.diameter();
    int count = (int) Math.min(MOST, Math.ceil(thickness / Math.min(deepest, share) - ROUNDING));
    List<Double> depths = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      depths.add(i == count ? thickness : thickness * i / count);
    }
    String rule =
        "Each pass takes no more than "
            + Length.print(deepest, units)
            + " ("
            + practice.source("deepest-pass")
            + ") nor half the bit's diameter ("
            + practice.source("share-of-diameter")
            + ").";
    return new Passes(thickness, thickness / count, depths, rule);
  }
}
