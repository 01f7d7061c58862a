package org.bearingline.kit;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The cutting cylinder of a bit.
 *
 * @param diameter mm, more than 0
 */
public record Cutter(double diameter) {

  /** Fails with a {@link Problem} on a diameter of 0, below 0, or without bound. */
  public Cutter {
    if (!(diameter > 0) || !Double.isFinite(diameter)) {
      throw new Problem(
          Place.field("bit"), "a bit needs a diameter above 0; give its cutting diameter");
    }
  }

  public double radius() {
    return diameter / 2;
  }
}
