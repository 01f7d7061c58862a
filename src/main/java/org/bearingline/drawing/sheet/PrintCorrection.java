package org.bearingline.drawing.sheet;

/**
 * What a printer makes of 100 mm.
 *
 * @param x mm measured on the bar across the paper (its shorter side), 90 to 110
 * @param y mm measured on the bar along the paper (its longer side), 90 to 110
 */
public record PrintCorrection(double x, double y) {

  /** A printer that prints true. */
  public static final PrintCorrection NONE = new PrintCorrection(100, 100);

  /** Two measures with a comma, such as {@code 99.4,99.8}, in mm; fails with a Problem. */
  public static PrintCorrection parse(String text) {
    throw new UnsupportedOperationException();
  }

  public boolean isNone() {
    return equals(NONE);
  }
}
