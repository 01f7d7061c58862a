package org.bearingline.routing.operation;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An opening right through: sawn inside the line first, then routed.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the opening
 */
public record ThroughOpening(Head head, Tooling tool, Target edge) implements Operation {

  @Override
  public String word() {
    return "through opening";
  }

  @Override
  public Optional<Tooling> tooling() {
    return Optional.of(tool);
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.empty();
  }

  @Override
  public Optional<Target> target() {
    return Optional.of(edge);
  }
}
