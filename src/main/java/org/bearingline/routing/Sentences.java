package org.bearingline.routing;

import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** Lengths inside sentences: inches with millimetres beside them, for makers think in either. */
final class Sentences {

  private Sentences() {}

  static String mm(double length) {
    return Length.print(length, Units.MM) + " (" + Length.print(length, Units.INCH) + ")";
  }
}
