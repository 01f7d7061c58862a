package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * An opening right through: sawn inside the line first, then routed.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the opening
 */
public record ThroughOpening(Head head, Tooling tool, Target edge) implements Hollow {

  /** The opening that leaves a ledge of even width; refused where the ledge takes all of it. */
  public static ThroughOpening inside(Head head, Tooling tool, Target ledge, double width) {
    return new ThroughOpening(
        head, tool, Target.opening(head.name(), Rim.inside(head, ledge, width)));
  }

  @Override
  public String word() {
    return "through opening";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.empty();
  }

  @Override
  public ThroughOpening mirrored(Similarity mirror) {
    return new ThroughOpening(head, tool, edge.mirrored(mirror));
  }
}
