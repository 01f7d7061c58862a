package org.bearingline.routing.operation;

import java.util.OptionalDouble;

/**
 * A groove along an edge, cut by a slot cutter that sinks r − R into the edge its bearing rides.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge it runs along
 * @param rides what the bearing runs on
 * @param fromFace mm from the face to the near side of the groove
 * @param width of the groove, mm
 * @param into how deep it goes in from the edge, mm
 */
public record EdgeGroove(
    Head head, Tooling tool, Target edge, Rides rides, double fromFace, double width, double into)
    implements Routed {

  @Override
  public String word() {
    return "groove";
  }

  /** What the bearing of a slot cutter runs on. */
  public enum Rides {
    /** The finished edge of the work itself: no template is needed. */
    WORK,
    /** The edge of the template. */
    TEMPLATE
  }

  /** Down to the far side of the groove. */
  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(fromFace + width);
  }
}
