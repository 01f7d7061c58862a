package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;

/**
 * A mortise cut through a collar: the template's slot is longer and wider than the mortise by the
 * collar's diameter less the bit's.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the mortise, its corners as round as the bit leaves them
 * @param length over all, mm
 * @param width mm, no less than the bit
 * @param depth mm; empty right through
 */
public record Mortise(
    Head head, Tooling tool, Target edge, double length, double width, OptionalDouble depth)
    implements Hollow {

  public Mortise {
    BitFits.check(head, "mortise", Math.min(length, width), tool);
  }

  /** A mortise about a centre, its length turned by {@code tilt} degrees from x. */
  public static Mortise about(
      Head head,
      Tooling tool,
      Point centre,
      double length,
      double width,
      double tilt,
      OptionalDouble depth) {
    Contour contour =
        Contour.routed(RoundedBox.of(centre, length, width, tool.cutter().radius(), tilt));
    return new Mortise(head, tool, Target.opening(head.name(), contour), length, width, depth);
  }

  @Override
  public String word() {
    return "mortise";
  }

  @Override
  public Mortise mirrored(Similarity mirror) {
    return new Mortise(head, tool, edge.mirrored(mirror), length, width, depth);
  }
}
