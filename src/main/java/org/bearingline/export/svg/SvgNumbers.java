package org.bearingline.export.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers stand in the file: plain decimals, whatever the machine's language. */
final class SvgNumbers {

  /** Finer than any shop: an arc's centre follows from its ends, which magnifies their rounding. */
  private static final int DECIMALS = 9;

  /** For letters and screens, whose curves are seen and never worked to. */
  private static final int COARSE = 4;

  private SvgNumbers() {}

  static String fine(double value) {
    return rounded(value, DECIMALS);
  }

  static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(COARSE, RoundingMode.HALF_EVEN).doubleValue() + 0.0;
  }

  static String coarse(double value) {
    return rounded(value, COARSE);
  }

  private static String rounded(double value, int decimals) {
    BigDecimal number =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return number.signum() == 0 ? "0" : number.toPlainString();
  }
}
