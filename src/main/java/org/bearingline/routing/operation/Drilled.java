package org.bearingline.routing.operation;

import java.util.Optional;
import java.util.OptionalDouble;

/** Holes that are marked through the template and drilled. */
public sealed interface Drilled extends Operation permits HingeCups, Drilling {

  @Override
  default Optional<Tooling> tooling() {
    return Optional.empty();
  }

  @Override
  default Optional<Target> target() {
    return Optional.empty();
  }

  /** The deepest hole; empty where one goes through. */
  @Override
  default OptionalDouble depth() {
    double deepest = 0;
    for (Hole hole : holes()) {
      if (hole.depth().isEmpty()) {
        return OptionalDouble.empty();
      }
      deepest = Math.max(deepest, hole.depth().getAsDouble());
    }
    return OptionalDouble.of(deepest);
  }
}
