package org.bearingline.routing.operation;

import java.util.OptionalDouble;

/**
 * The shallow recess that takes one leaf of a butt hinge, open at the edge of the part.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the recess, its open side sawn
 * @param deep mm: the leaf's thickness
 */
public record HingeLeaf(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  @Override
  public String word() {
    return "hinge leaf";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }
}
