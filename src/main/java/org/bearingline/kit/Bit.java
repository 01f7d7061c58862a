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
 * @param bearingHeight how tall its bearing is, mm; empty where not known
 */
public record Bit(
    Cutter cutter,
    OptionalDouble cuttingLength,
    OptionalDouble shank,
    BearingSeat bearing,
    OptionalDouble bearingHeight) {

  public Bit {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(cuttingLength);
    Objects.requireNonNull(shank);
    Objects.requireNonNull(bearing);
    Objects.requireNonNull(bearingHeight);
  }

  /** A bit whose bearing was not measured. */
  public Bit(Cutter cutter, OptionalDouble cuttingLength, OptionalDouble shank, BearingSeat seat) {
    this(cutter, cuttingLength, shank, seat, OptionalDouble.empty());
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
