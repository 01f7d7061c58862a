package org.bearingline.cutlist;

import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Checks of sizes that a maker may have written. */
final class Sizes {

  private Sizes() {}

  static void check(String field, double mm) {
    if (!(mm > 0 && mm <= Length.LARGEST)) {
      throw new Problem(
          Place.field(field),
          "a length above 0 and up to " + Length.LARGEST / 1000 + " m is wanted");
    }
  }

  static void checkOrZero(String field, double mm) {
    if (mm != 0) {
      check(field, mm);
    }
  }

  static void checkCount(int quantity) {
    if (quantity < 1 || quantity > 1000) {
      throw new Problem(Place.field("quantity"), "a count from 1 to 1000 is wanted");
    }
  }
}
