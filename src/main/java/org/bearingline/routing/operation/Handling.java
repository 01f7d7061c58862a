package org.bearingline.routing.operation;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.routing.Station;

/**
 * How the maker works an operation, as far as he says so; lengths in mm.
 *
 * @param station where the router is
 * @param deepestPass his own limit for a pass; empty for that of practice
 * @param bearingAt where the bit's bearing sits; empty for that of the kit's bit
 * @param bearingHeight how tall the bearing is; empty for that of the kit's bit, or the usual
 * @param tube how far the collar's tube hangs below the base; empty for that of the kit's collar
 */
public record Handling(
    Station station,
    OptionalDouble deepestPass,
    Optional<Bit.BearingSeat> bearingAt,
    OptionalDouble bearingHeight,
    OptionalDouble tube) {

  /** A router in the hands, and nothing said of the rest. */
  public static final Handling USUAL = of(Station.HAND_HELD, OptionalDouble.empty());

  public Handling {
    Objects.requireNonNull(station);
    Objects.requireNonNull(deepestPass);
    Objects.requireNonNull(bearingAt);
    Objects.requireNonNull(bearingHeight);
    Objects.requireNonNull(tube);
  }

  /** Nothing said of the tool itself. */
  public static Handling of(Station station, OptionalDouble deepestPass) {
    return new Handling(
        station, deepestPass, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }
}
