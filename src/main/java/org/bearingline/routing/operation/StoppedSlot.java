package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.problem.Problem;

/**
 * A slot with round ends that stops short of the edges, no narrower than its bit: the edges of the
 * template's opening stand R − r outside those of the slot, all round.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the slot
 * @param length over all, mm
 * @param width between its sides, mm
 * @param deep mm, more than 0
 */
public record StoppedSlot(
    Head head, Tooling tool, Target edge, double length, double width, double deep)
    implements Hollow {

  public StoppedSlot {
    BitFits.check(head, "slot", width, tool);
  }

  /** A slot by the centres of its round ends, two different points. */
  public static StoppedSlot between(
      Head head, Tooling tool, Point from, Point to, double width, double deep) {
    return new StoppedSlot(
        head, tool, target(head, from, to, width), from.distanceTo(to) + width, width, deep);
  }

  /** The edge of such a slot. */
  public static Target target(Head head, Point from, Point to, double width) {
    double length = from.distanceTo(to) + width;
    if (!(length > width)) {
      throw new Problem(
          head.place(),
          head.name() + ": both ends of this slot are the same point; drill a hole instead");
    }
    double tilt = Degrees.of(to.minus(from));
    return Target.opening(
        head.name(),
        Contour.routed(RoundedBox.of(from.towards(to, 0.5), length, width, width / 2, tilt)));
  }

  @Override
  public String word() {
    return "stopped slot";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public StoppedSlot mirrored(Similarity mirror) {
    return new StoppedSlot(head, tool, edge.mirrored(mirror), length, width, deep);
  }
}
