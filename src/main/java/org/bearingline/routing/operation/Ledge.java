package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;

/**
 * The shallow recess round a through opening that carries a drop-in plate.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge the outer edge of the ledge
 * @param deep mm, more than 0
 */
public record Ledge(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  /** A ledge of even width round an opening; refused where the wood round it is too narrow. */
  public static Ledge around(
      Head head, Tooling tool, Part part, Target opening, double width, double deep) {
    return new Ledge(
        head, tool, Target.opening(head.name(), Rim.around(head, part, opening, width)), deep);
  }

  @Override
  public String word() {
    return "ledge";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public Ledge mirrored(Similarity mirror) {
    return new Ledge(head, tool, edge.mirrored(mirror), deep);
  }
}
