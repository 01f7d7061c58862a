package org.bearingline.routing.operation;

import java.util.OptionalDouble;

/**
 * A slot with round ends that stops short of the edges, no narrower than its bit: the edges of the
 * template's opening stand R − r outside those of the slot, all round.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the slot
 * @param width between its sides, mm
 * @param deep mm, more than 0
 */
public record StoppedSlot(Head head, Tooling tool, Target edge, double width, double deep)
    implements Hollow {

  @Override
  public String word() {
    return "stopped slot";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }
}
