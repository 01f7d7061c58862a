package org.bearingline.routing.operation;

import java.util.OptionalDouble;

/**
 * A mortise cut through a collar: the template's slot is longer and wider than the mortise by the
 * collar's diameter less the bit's.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the mortise, its corners as round as the bit
 * @param length over all, mm
 * @param width mm, no less than the bit
 * @param depth mm; empty right through
 */
public record Mortise(
    Head head, Tooling tool, Target edge, double length, double width, OptionalDouble depth)
    implements Hollow {

  @Override
  public String word() {
    return "mortise";
  }
}
