package org.bearingline.routing.setup;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;

/**
 * A bit with what guides it; lengths in mm.
 *
 * @param cutter the cutting cylinder
 * @param cuttingLength of the cutting edge; empty where not known
 * @param follower bearing or collar
 * @param seat where a bearing sits; of no matter with a collar
 * @param bearingHeight how tall the bearing is; empty for the usual height
 * @param collarTube how far the collar's tube hangs below the base; empty where not known
 */
public record SetupTool(
    Cutter cutter,
    OptionalDouble cuttingLength,
    Follower follower,
    Bit.BearingSeat seat,
    OptionalDouble bearingHeight,
    OptionalDouble collarTube) {

  public SetupTool {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(follower);
    Objects.requireNonNull(seat);
    Checks.above0("cutting-length", cuttingLength);
    Checks.above0("bearing-height", bearingHeight);
    Checks.above0("collar-tube", collarTube);
  }

  /** A bit of a kit with a follower, and what the kit knows of both. */
  public static SetupTool of(Bit bit, Follower follower) {
    return new SetupTool(
        bit.cutter(),
        bit.cuttingLength(),
        follower,
        bit.bearing(),
        bit.bearingHeight(),
        follower instanceof Follower.Collar collar ? collar.tube() : OptionalDouble.empty());
  }

  public boolean hasCollar() {
    return follower instanceof Follower.Collar;
  }
}
