package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.routing.Template;

/**
 * One plate to make and what it is for.
 *
 * @param template the plate, as seen from face A
 * @param services the operations it makes, in their order
 * @param guides centres of holes pricked or drilled through the plate
 * @param mirroredPrint whether its paper is glued on for face B and so is printed mirrored
 */
public record PlannedTemplate(
    Template template, List<Service> services, List<Point> guides, boolean mirroredPrint) {

  public PlannedTemplate {
    services = List.copyOf(services);
    guides = List.copyOf(guides);
  }

  /** One operation that a template makes, with the face that lies up. */
  public record Service(Operation operation, Face face) {}
}
