package org.bearingline.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;

/** Writes lengths and areas for makers to read. */
final class LengthPrinter {

  /** Stands before what was rounded. */
  static final String ABOUT = "≈ ";

  /** A length this near to its printed form, in mm, is called exact: only computing put it off. */
  private static final double EXACT = 1e-6;

  private static final double SIXTY_FOURTH = 25.4 / 64;
  private static final double HUNDREDTH = 0.01;
  private static final double THOUSANDTH = 0.001;
  private static final double TENTH = 0.1;

  /** mm from which a drawing says whole inches. */
  private static final double LONG = 100 * 25.4;

  /** Slack of the bounds in steps, so that an exact limit is not moved by its last bits. */
  private static final double BOUND_SLACK = EXACT / SIXTY_FOURTH;

  private LengthPrinter() {}

  static String nearest(double mm, Units units) {
    requireFinite(mm);
    if (units == Units.MM) {
      // Eighths of an inch, such as 9.525 mm, come out whole in thousandths: no need to round.
      double thousandths = half(mm / THOUSANDTH);
      if (Math.abs(thousandths * THOUSANDTH - mm) <= EXACT) {
        return trimmed(new BigDecimal(new BigDecimal(thousandths).toBigInteger(), 3)) + " mm";
      }
    }
    double steps = steps(mm, units, LengthPrinter::half);
    boolean exact = Math.abs(steps * step(units) - mm) <= EXACT;
    return (exact ? "" : ABOUT) + words(steps, units);
  }

  static String drawn(double mm, Units units) {
    String nearest = nearest(mm, units);
    double step = units == Units.MM ? TENTH : 25.4;
    boolean fine = units == Units.INCH && Math.abs(mm) < LONG;
    double rounded = half(mm / step) * step;
    return fine || rounded == 0 || !nearest.startsWith(ABOUT)
        ? nearest
        : ABOUT + nearest(rounded, units);
  }

  static String rough(double mm, Units units) {
    requireFinite(mm);
    double size = Math.abs(mm);
    double step =
        units == Units.INCH
            ? size < 2 * 25.4 ? 25.4 / 16 : 25.4 / 8
            : size < 20 ? 0.5 : size < 1000 ? 1 : 10;
    double rounded = half(mm / step) * step;
    if (rounded == 0) {
      return nearest(mm, units);
    }
    return (Math.abs(rounded - mm) <= EXACT ? "" : ABOUT) + nearest(rounded, units);
  }

  static String roughArea(double mm2, Units units) {
    requireFinite(mm2);
    double unit = units == Units.INCH ? 25.4 * 25.4 : 1;
    double value = mm2 / unit;
    double least = units == Units.INCH ? 0.001 : 0.1;
    String sign = units == Units.INCH ? " in²" : " mm²";
    if (value > 0 && value < least) {
      return "under " + least + sign;
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(2, RoundingMode.HALF_UP));
    boolean exact = Math.abs(rounded.doubleValue() - value) <= 1e-9 * Math.max(1, Math.abs(value));
    return (exact ? "" : ABOUT) + trimmed(rounded) + sign;
  }

  static String atMost(double mm, Units units) {
    return words(steps(mm, units, s -> Math.floor(s + BOUND_SLACK)), units);
  }

  static String atLeast(double mm, Units units) {
    return words(steps(mm, units, s -> Math.ceil(s - BOUND_SLACK)), units);
  }

  static String area(double mm2, Units units) {
    requireFinite(mm2);
    double unit = units == Units.INCH ? 25.4 * 25.4 : 1;
    double value = mm2 / unit;
    // Two decimals, or three figures where the area is small.
    double figures = value == 0 ? 2 : 2 - Math.floor(Math.log10(Math.abs(value)));
    int decimals = (int) Math.max(2, Math.min(6, figures));
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    boolean exact = Math.abs(rounded.doubleValue() - value) <= 1e-9 * Math.max(1, Math.abs(value));
    return (exact ? "" : ABOUT) + trimmed(rounded) + (units == Units.INCH ? " in²" : " mm²");
  }

  private static double step(Units units) {
    return units == Units.INCH ? SIXTY_FOURTH : HUNDREDTH;
  }

  private static double steps(double mm, Units units, DoubleUnaryOperator rounding) {
    requireFinite(mm);
    return rounding.applyAsDouble(mm / step(units));
  }

  // Halves go away from zero, so that a length and its negative print alike.
  private static double half(double steps) {
    return Math.copySign(Math.floor(Math.abs(steps) + 0.5), steps);
  }

  private static String words(double steps, Units units) {
    BigInteger whole = new BigDecimal(steps).toBigInteger();
    if (units == Units.MM) {
      return trimmed(new BigDecimal(whole, 2)) + " mm";
    }
    String sign = whole.signum() < 0 ? "-" : "";
    BigInteger[] split = whole.abs().divideAndRemainder(BigInteger.valueOf(64));
    if (split[1].signum() == 0) {
      return sign + split[0] + " in";
    }
    BigInteger common = split[1].gcd(BigInteger.valueOf(64));
    String fraction = split[1].divide(common) + "/" + BigInteger.valueOf(64).divide(common);
    return sign + (split[0].signum() == 0 ? "" : split[0] + "-") + fraction + " in";
  }

  private static String trimmed(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("only finite lengths and areas print, got " + value);
    }
  }
}
