package org.bearingline.outside.dxf;

import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.Quoted;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A group code with its value.
 *
 * @param code what the value means
 * @param value as written, without the spaces round it
 * @param place of the value
 */
record DxfTag(int code, String value, Place place) {

  boolean is(int otherCode, String otherValue) {
    return code == otherCode && value.equals(otherValue);
  }

  /** The value as a number within reach. */
  double number() {
    if (isPlain(value)) {
      try {
        return near(Double.parseDouble(value));
      } catch (NumberFormatException noNumber) {
        // Refused below.
      }
    }
    throw new Problem(
        place, "“" + Quoted.of(value) + "” is no number where one must stand; the file is damaged");
  }

  private double near(double number) {
    boolean isCoordinate = code >= 10 && code < 40;
    if (!isCoordinate && !(Math.abs(number) <= DrawingLimits.FARTHEST)) {
      throw new Problem(
          place, Quoted.of(value) + " is too large for what stands here; the file is damaged");
    }
    return DrawingLimits.near(number, place);
  }

  /** The value as a whole number. */
  int whole() {
    double number = number();
    if (number != Math.rint(number)) {
      throw new Problem(place, Quoted.of(value) + " is not the whole number that must stand here");
    }
    return (int) number;
  }

  /** Keeps out the words and forms that Java reads as numbers and DXF does not. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= 60;
  }
}
