package org.bearingline.drawing.sheet;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What a printer makes of 100 mm. A drawing prints true when it is enlarged by 100 / x across and
 * 100 / y along the paper.
 *
 * @param x mm measured on bar X, across the paper (its shorter side), 90 to 110
 * @param y mm measured on bar Y, along the paper (its longer side), 90 to 110
 */
public record PrintCorrection(double x, double y) {

  /** A printer that prints true. */
  public static final PrintCorrection NONE = new PrintCorrection(100, 100);

  /** A scale error of a tenth is no printer's: the page was fitted to the paper, or misread. */
  private static final double LEAST = 90;

  private static final double MOST = 110;

  public PrintCorrection {
    if (!believable(x) || !believable(y)) {
      throw new Problem(
          Place.option("--printed"),
          "the bars of 100 mm can be corrected between 90 and 110 mm only; print again at 100 %"
              + " without fitting to the page, and measure bar X and bar Y in mm");
    }
  }

  private static boolean believable(double mm) {
    return mm >= LEAST && mm <= MOST;
  }

  /** Two measures with a comma, such as {@code 99.4,99.8}, in mm; fails with a Problem. */
  public static PrintCorrection parse(String text) {
    String[] parts = text.split(",", -1);
    if (parts.length != 2) {
      throw unreadable(text);
    }
    return new PrintCorrection(measure(parts[0], text), measure(parts[1], text));
  }

  private static double measure(String part, String text) {
    String digits = part.strip();
    if (digits.endsWith("mm")) {
      digits = digits.substring(0, digits.length() - 2).strip();
    }
    if (!digits.matches("\\d{1,4}(\\.\\d{1,6})?")) {
      throw unreadable(text);
    }
    return Double.parseDouble(digits);
  }

  private static Problem unreadable(String text) {
    return new Problem(
        Place.option("--printed"),
        "“"
            + text
            + "” is not two measures; give what bar X and bar Y measured in mm, such as"
            + " 99.4,99.8");
  }

  public boolean isNone() {
    return x == NONE.x && y == NONE.y;
  }
}
