package org.bearingline.shape.kept;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as a shape file has them: to a billionth of a millimetre, without idle zeros. */
final class Millimetres {

  private static final int DIGITS = 9;

  private Millimetres() {}

  static String of(double mm) {
    BigDecimal rounded = new BigDecimal(mm).setScale(DIGITS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0mm" : rounded.stripTrailingZeros().toPlainString() + "mm";
  }
}
