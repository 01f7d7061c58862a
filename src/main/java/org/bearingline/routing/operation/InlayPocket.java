package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * The recess that takes an inlay, cut with the larger of two collars.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the pocket
 * @param deep mm, more than 0
 */
public record InlayPocket(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  @Override
  public String word() {
    return "inlay pocket";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public InlayPocket mirrored(Similarity mirror) {
    return new InlayPocket(head, tool, edge.mirrored(mirror), deep);
  }
}
