package org.bearingline.kit;

/**
 * The cutting cylinder of a bit.
 *
 * @param diameter mm, more than 0
 */
public record Cutter(double diameter) {

  public Cutter {
    if (!(diameter > 0) || !Double.isFinite(diameter)) {
      throw new IllegalArgumentException("a cutter has a positive diameter, got " + diameter);
    }
  }

  public double radius() {
    return diameter / 2;
  }
}
