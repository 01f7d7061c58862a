package org.bearingline.routing.setup;

import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Refuses figures no setup can have, in words. */
final class Checks {

  private Checks() {}

  static void above0(String field, double mm) {
    if (!(mm > 0 && mm <= Length.LARGEST)) {
      throw new Problem(
          Place.field(field),
          "a length above 0 and up to " + Math.round(Length.LARGEST / 1000) + " m is wanted here");
    }
  }

  static void above0(String field, OptionalDouble mm) {
    if (mm.isPresent()) {
      above0(field, mm.getAsDouble());
    }
  }

  static void from0(String field, double mm) {
    if (mm != 0) {
      above0(field, mm);
    }
  }
}
