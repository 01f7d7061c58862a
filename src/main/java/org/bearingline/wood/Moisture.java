package org.bearingline.wood;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Limits of a moisture content in percent, and how one reads in a sentence. */
final class Moisture {

  /** Fibre saturation: above it wood no longer swells (Wood Handbook, equation 13-3). */
  static final double MOST = 30;

  private Moisture() {}

  static void check(String name, double percent) {
    if (!(percent >= 0 && percent <= MOST)) {
      throw new Problem(
          Place.field(name),
          "a moisture content from 0 to 30 % is wanted, not "
              + plain(percent)
              + " %; above 30 % wood no longer swells");
    }
  }

  static void checkOrder(double driest, double dampest) {
    if (driest > dampest) {
      throw new Problem(
          Place.field("humidity"),
          "the driest wood, "
              + plain(driest)
              + " %, is damper than the dampest, "
              + plain(dampest)
              + " %; give the lower figure first");
    }
  }

  /** With one decimal at most. */
  static String plain(double percent) {
    if (!Double.isFinite(percent)) {
      return Double.toString(percent);
    }
    BigDecimal rounded = new BigDecimal(percent).setScale(1, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
