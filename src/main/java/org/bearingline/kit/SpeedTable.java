package org.bearingline.kit;

import java.util.OptionalInt;

/** The fastest a bit may turn, by its diameter. */
public final class SpeedTable {

  private SpeedTable() {}

  /**
   * Revolutions a minute that a bit of {@code diameter} mm must not pass; empty above the largest
   * diameter of the table, where only the tool's own marking tells.
   */
  public static OptionalInt ceiling(double diameter) {
    throw new UnsupportedOperationException();
  }
}
