package org.bearingline.kit;

import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The range of a router's tools; what lies outside it is mostly a slip of the unit. The bounds are
 * common practice: engraving bits begin at 1/64 in, the tables of bit speed end at 3-1/2 in, and no
 * base takes a collar wider than 3 in.
 */
public final class ToolSizes {

  /** Of a bit, mm. */
  private static final double THINNEST_BIT = 25.4 / 64;

  /** Of a bit or a bearing, mm; well above the widest that is sold. */
  private static final double WIDEST_BIT = 4 * 25.4;

  /** Outside, mm. */
  private static final double WIDEST_COLLAR = 3 * 25.4;

  /** Of a collar, mm; one of 9/16 in is usual. */
  private static final double LONGEST_TUBE = 2 * 25.4;

  /** The thinnest bearing or collar, mm. */
  private static final double THINNEST_BEARING = 25.4 / 8;

  private ToolSizes() {}

  /** The cutting diameter of a bit, mm; fails with a Problem where no bit is as thin or wide. */
  public static double bit(double mm, Place place) {
    return checked("bit", mm, THINNEST_BIT, WIDEST_BIT, place);
  }

  /** The diameter of a bearing, mm; fails with a Problem where none is as small or large. */
  public static double bearing(double mm, Place place) {
    return checked("bearing", mm, THINNEST_BEARING, WIDEST_BIT, place);
  }

  /** The outside diameter of a collar, mm; fails with a Problem where none is as small or large. */
  public static double collar(double mm, Place place) {
    return checked("collar", mm, THINNEST_BEARING, WIDEST_COLLAR, place);
  }

  /** How far a collar's tube hangs down, mm; fails with a Problem where none is so long. */
  public static double tube(double mm, Place place) {
    if (mm <= LONGEST_TUBE + 1e-9) {
      return mm;
    }
    throw new Problem(
        place,
        "no collar's tube is longer than "
            + both(LONGEST_TUBE)
            + "; measure it below the router's base, and check its unit");
  }

  private static double checked(String what, double mm, double least, double most, Place place) {
    if (mm >= least - 1e-9 && mm <= most + 1e-9) {
      return mm;
    }
    throw new Problem(
        place,
        "no "
            + what
            + " is "
            + (mm < least ? "thinner than " + both(least) : "wider than " + both(most))
            + "; check the diameter and its unit");
  }

  private static String both(double mm) {
    return Length.print(mm, Units.INCH) + " (" + Length.print(mm, Units.MM) + ")";
  }
}
