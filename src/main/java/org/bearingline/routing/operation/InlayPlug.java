package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * The piece that fills a pocket, cut from inlay stock through the same template opening with the
 * smaller collar.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the pocket, which the plug fills
 * @param pocket name of the operation that cuts the pocket
 * @param deep mm: the thickness of the inlay stock
 */
public record InlayPlug(Head head, Tooling tool, Target edge, String pocket, double deep)
    implements Hollow {

  @Override
  public String word() {
    return "inlay plug";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public InlayPlug mirrored(Similarity mirror) {
    return new InlayPlug(head, tool, edge.mirrored(mirror), pocket, deep);
  }
}
