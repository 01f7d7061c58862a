package org.bearingline.routing.operation;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;

/**
 * The bit of one operation and what it follows.
 *
 * @param cutter its cutting cylinder; of a slot cutter its disc
 * @param cuttingLength of the cutting edge, mm; of a slot cutter its thickness; empty where not
 *     known
 * @param follower what rides the template, or the work's own edge
 */
public record Tooling(Cutter cutter, OptionalDouble cuttingLength, Follower follower) {

  public Tooling {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(cuttingLength);
    Objects.requireNonNull(follower);
  }

  public Tooling(Cutter cutter, Follower follower) {
    this(cutter, OptionalDouble.empty(), follower);
  }

  public static Tooling flush(Cutter cutter) {
    return new Tooling(cutter, Follower.flush(cutter));
  }

  /** R − r in mm: how much larger a template's opening is than what is cut; below 0 the reverse. */
  public double wider() {
    return follower.radius() - cutter.radius();
  }

  public Tooling with(Follower other) {
    return new Tooling(cutter, cuttingLength, other);
  }
}
