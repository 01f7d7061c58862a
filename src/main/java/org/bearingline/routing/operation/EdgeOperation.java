package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * The part's own outer edge, right through the stock or to a depth: a rebated or moulded edge
 * stops.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge the outer edge
 * @param depth mm; empty right through
 */
public record EdgeOperation(Head head, Tooling tool, Target edge, OptionalDouble depth)
    implements Routed {

  @Override
  public String word() {
    return "edge";
  }

  @Override
  public EdgeOperation mirrored(Similarity mirror) {
    return new EdgeOperation(head, tool, edge.mirrored(mirror), depth);
  }
}
