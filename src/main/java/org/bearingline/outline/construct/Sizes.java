package org.bearingline.outline.construct;

import java.math.BigDecimal;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Sizes in sentences, in both units, and the refusals that every construction shares. */
final class Sizes {

  private Sizes() {}

  /** A limit from above, rounded down so that what is printed fits. */
  static String atMost(double mm) {
    return Length.printAtMost(mm, Units.MM) + " (" + Length.printAtMost(mm, Units.INCH) + ")";
  }

  /** A limit from below, rounded up so that what is printed is enough. */
  static String atLeast(double mm) {
    return Length.printAtLeast(mm, Units.MM) + " (" + Length.printAtLeast(mm, Units.INCH) + ")";
  }

  /** What the maker gave: in inches too, where it was round in them. */
  static String about(double mm) {
    String said = Length.print(mm, Units.MM);
    return Length.isExact(mm, Units.INCH) && mm != 0
        ? said + " (" + Length.print(mm, Units.INCH) + ")"
        : said;
  }

  static Problem refusal(String sentence) {
    return new Problem(Place.nowhere(), sentence);
  }

  static void requirePositive(String name, double mm) {
    if (!Double.isFinite(mm)) {
      throw refusal("the " + name + " must be a plain length; give one such as 20mm");
    }
    if (!(mm > 0)) {
      throw refusal("the " + name + " must be more than 0, not " + about(mm));
    }
  }

  static void requireTurn(String name, double degrees, double most) {
    if (!(degrees > 0 && degrees <= most)) {
      throw refusal(
          "the %s must be more than 0° and at most %.0f°, not %s°"
              .formatted(name, most, plain(degrees)));
    }
  }

  private static String plain(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }
}
