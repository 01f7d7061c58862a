package org.bearingline.kit;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A router bit of a kit.
 *
 * @param cutter its cutting cylinder
 * @param cuttingLength length of the cutting edge, mm; empty where not known
 * @param shank diameter of the shank, mm; empty where not known
 * @param bearing where its bearing sits
 */
public record Bit(
    Cutter cutter, OptionalDouble cuttingLength, OptionalDouble shank, BearingSeat bearing) {

  public Bit {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(cuttingLength);
    Objects.requireNonNull(shank);
    Objects.requireNonNull(bearing);
  }

  /** Where a bit carries its bearing. */
  public enum BearingSeat {
    SHANK,
    TIP,
    BOTH,
    /** None: the bit works through a collar. */
    NONE
  }

  /** Cutting diameter in mm. */
  public double diameter() {
    return cutter.diameter();
  }
}
