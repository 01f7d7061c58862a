package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holes whose centres are marked through the template.
 *
 * @param head name and face
 * @param holes where to drill
 */
public record Drilling(Head head, List<Hole> holes) implements Operation {

  public Drilling {
    holes = List.copyOf(holes);
  }

  @Override
  public String word() {
    return "drilling";
  }

  @Override
  public Optional<Tooling> tooling() {
    return Optional.empty();
  }

  /** The deepest hole; empty where one goes through. */
  @Override
  public OptionalDouble depth() {
    double deepest = 0;
    for (Hole hole : holes) {
      if (hole.depth().isEmpty()) {
        return OptionalDouble.empty();
      }
      deepest = Math.max(deepest, hole.depth().getAsDouble());
    }
    return OptionalDouble.of(deepest);
  }

  @Override
  public Optional<Target> target() {
    return Optional.empty();
  }
}
