package org.bearingline.length;

import java.util.OptionalDouble;
import org.bearingline.problem.Problem;

/**
 * Lengths as makers write them: {@code 3/4in}, {@code 1-1/2in}, {@code 1 1/2"}, {@code 6' 3-1/2"},
 * {@code 0.75in}, {@code 19mm}, {@code 2.5cm}, {@code 1m}, also with the fraction and prime signs
 * of Unicode. Used at the edges only: inside, lengths are double millimetres.
 */
public final class Length {

  /** The largest length that is read, in mm: a hundred metres. */
  public static final double LARGEST = 100_000;

  private Length() {}

  /** Millimetres of a written length with its unit and no sign; fails with a Problem. */
  public static double parse(String text) {
    return parse(text, LengthForm.WITH_UNITS);
  }

  /** Millimetres of a written length, a bare number being in {@code bare}; fails with a Problem. */
  public static double parse(String text, Units bare) {
    return parse(text, LengthForm.WITH_UNITS.bareIn(bare));
  }

  /** Millimetres of a length written in the given form; fails with a Problem at no place. */
  public static double parse(String text, LengthForm form) {
    return new LengthReader(text, form).read();
  }

  /** Millimetres, or nothing where the text is no length of that form; never fails. */
  public static OptionalDouble find(String text, LengthForm form) {
    try {
      return OptionalDouble.of(parse(text, form));
    } catch (Problem notALength) {
      return OptionalDouble.empty();
    }
  }

  /**
   * The length in words, such as {@code 1-1/2 in} or {@code 38.1 mm}: the nearest 1/64 inch,
   * reduced, or the nearest 0.01 mm; {@code ≈} stands before what is off by more than 1e-6 mm. What
   * is printed can be read again.
   */
  public static String print(double mm, Units units) {
    return LengthPrinter.nearest(mm, units);
  }

  /** Whether {@link #print} gives the length without rounding it. */
  public static boolean isExact(double mm, Units units) {
    return !print(mm, units).startsWith(LengthPrinter.ABOUT);
  }

  /**
   * The length in words where only its size matters and nobody works to it, such as how much edge
   * is routed: the nearest 1/8 inch or whole millimetre, 10 mm from a metre up, and finer below 2
   * inches and 20 mm; marked when rounded.
   */
  public static String printRough(double mm, Units units) {
    return LengthPrinter.rough(mm, units);
  }

  /**
   * The length as a dimension of a drawing has it: as {@link #print}, but what is rounded is
   * rounded to 0.1 mm, and to a whole inch from 100 in up, which nobody measures finer.
   */
  public static String printDrawn(double mm, Units units) {
    return LengthPrinter.drawn(mm, units);
  }

  /** The largest printable length that is not more than {@code mm}: for limits from above. */
  public static String printAtMost(double mm, Units units) {
    return LengthPrinter.atMost(mm, units);
  }

  /** The smallest printable length that is not less than {@code mm}: for limits from below. */
  public static String printAtLeast(double mm, Units units) {
    return LengthPrinter.atLeast(mm, units);
  }

  /** An area of which only the size matters: in two figures, and none that is next to nothing. */
  public static String printRoughArea(double mm2, Units units) {
    return LengthPrinter.roughArea(mm2, units);
  }

  /** An area of {@code mm2} square millimetres in words, marked when rounded. */
  public static String printArea(double mm2, Units units) {
    return LengthPrinter.area(mm2, units);
  }
}
