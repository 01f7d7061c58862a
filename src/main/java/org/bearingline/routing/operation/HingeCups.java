package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The 35 mm holes that take the cups of concealed hinges, with their screw holes.
 *
 * @param head name and face
 * @param holes where to drill
 */
public record HingeCups(Head head, List<Hole> holes) implements Operation {

  public HingeCups {
    holes = List.copyOf(holes);
  }

  @Override
  public String word() {
    return "hinge cups";
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
