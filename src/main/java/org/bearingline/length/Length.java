package org.bearingline.length;

/** Lengths as makers write them. Used at the edges only: inside, lengths are double millimetres. */
public final class Length {

  private Length() {}

  /** Millimetres of a written length; fails with a Problem. */
  public static double parse(String text) {
    throw new UnsupportedOperationException();
  }

  /** The length in words: nearest 1/64 inch reduced, marked when not exact, or millimetres. */
  public static String print(double mm, Units units) {
    throw new UnsupportedOperationException();
  }
}
