package org.bearingline.shape.formula;

import java.math.BigDecimal;
import java.math.MathContext;

/** Values in messages. */
public final class Plain {

  private static final MathContext SHORT = new MathContext(6);

  private Plain() {}

  /** To six significant digits with its unit. */
  public static String of(double value, Dimension dimension) {
    if (value == 0) {
      return dimension.equals(Dimension.ANGLE) ? "0°" : "0";
    }
    String digits = new BigDecimal(value, SHORT).stripTrailingZeros().toPlainString();
    if (dimension.equals(Dimension.LENGTH)) {
      return digits + " mm";
    }
    if (dimension.equals(Dimension.AREA)) {
      return digits + " mm²";
    }
    return dimension.equals(Dimension.ANGLE) ? digits + "°" : digits;
  }

  public static String mm(double value) {
    return of(value, Dimension.LENGTH);
  }
}
