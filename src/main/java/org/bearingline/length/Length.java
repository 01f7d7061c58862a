package org.bearingline.length;

import java.util.OptionalDouble;

/** Lengths as makers write them. Used at the edges only: inside, lengths are double millimetres. */
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
    throw new UnsupportedOperationException();
  }

  /** Millimetres, or nothing where the text is no length of that form. */
  public static OptionalDouble find(String text, LengthForm form) {
    throw new UnsupportedOperationException();
  }

  /** The length in words: nearest 1/64 inch reduced, marked when not exact, or millimetres. */
  public static String print(double mm, Units units) {
    throw new UnsupportedOperationException();
  }

  /** The largest printable length that is not more than {@code mm}: for limits from above. */
  public static String printAtMost(double mm, Units units) {
    throw new UnsupportedOperationException();
  }

  /** The smallest printable length that is not less than {@code mm}: for limits from below. */
  public static String printAtLeast(double mm, Units units) {
    throw new UnsupportedOperationException();
  }

  /** An area of {@code mm2} square millimetres in words, marked when rounded. */
  public static String printArea(double mm2, Units units) {
    throw new UnsupportedOperationException();
  }
}
