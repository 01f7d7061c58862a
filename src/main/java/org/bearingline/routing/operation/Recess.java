package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * A blind opening, such as a drawer pull.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the recess
 * @param deep mm, more than 0
 */
public record Recess(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  @Override
  public String word() {
    return "recess";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public Recess mirrored(Similarity mirror) {
    return new Recess(head, tool, edge.mirrored(mirror), deep);
  }
}
