package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.kit.SlotCutter;
import org.bearingline.outline.Similarity;
import org.bearingline.routing.GrooveExtent;

/**
 * A groove along an edge, cut by a slot cutter that sinks r − R into the edge its bearing rides.
 *
 * @param head name and face
 * @param cutter the slot cutter on its bearing
 * @param edge it runs along
 * @param extent which stretch of the edge
 * @param rides what the bearing runs on
 * @param fromFace mm from the face to the near side of the groove
 * @param into mm the groove is to go in from the part's edge; empty for what cutter and bearing
 *     give
 */
public record EdgeGroove(
    Head head,
    SlotCutter cutter,
    Target edge,
    GrooveExtent extent,
    Rides rides,
    double fromFace,
    OptionalDouble into)
    implements Routed {

  /** What the bearing of a slot cutter runs on. */
  public enum Rides {
    /** The finished edge of the work itself: no template is needed. */
    WORK,
    /** The edge of the template. */
    TEMPLATE
  }

  /** The same by another name. */
  public EdgeGroove named(String name) {
    return new EdgeGroove(
        new Head(name, head.face(), head.place(), head.handling()),
        cutter,
        edge,
        extent,
        rides,
        fromFace,
        into);
  }

  /** The same, worked in another way. */
  public EdgeGroove with(Handling handling) {
    return new EdgeGroove(head.with(handling), cutter, edge, extent, rides, fromFace, into);
  }

  @Override
  public String word() {
    return "groove";
  }

  @Override
  public Tooling tool() {
    return new Tooling(cutter.cutter(), OptionalDouble.of(cutter.thickness()), cutter.bearing());
  }

  /** Down to the far side of the groove. */
  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(fromFace + cutter.thickness());
  }

  @Override
  public EdgeGroove mirrored(Similarity mirror) {
    return new EdgeGroove(
        head, cutter, edge.mirrored(mirror), extent.mirrored(mirror), rides, fromFace, into);
  }
}
