package org.bearingline.routing.operation;

import java.util.OptionalDouble;

/**
 * The shallow recess round a through opening that carries a drop-in plate.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge the outer edge of the ledge
 * @param deep mm, more than 0
 */
public record Ledge(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  @Override
  public String word() {
    return "ledge";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }
}
