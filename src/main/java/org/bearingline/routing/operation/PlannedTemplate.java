package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.routing.Template;

/**
 * One plate to make and what it is for.
 *
 * @param template the plate, as seen from face A
 * @param services the operations it makes
 * @param guides holes whose centres are pricked through the plate
 * @param eitherSideUp whether the plate is its own mirror image, so that turned over it makes the
 *     same part
 * @param mirroredPrint whether it only ever lies on face B, so that the paper glued to its upper
 *     side is printed mirrored
 * @param sentences which side lies up, for the maker
 */
public record PlannedTemplate(
    Template template,
    List<Service> services,
    List<Hole> guides,
    boolean eitherSideUp,
    boolean mirroredPrint,
    List<String> sentences) {

  public PlannedTemplate {
    services = List.copyOf(services);
    guides = List.copyOf(guides);
    sentences = List.copyOf(sentences);
  }

  public int number() {
    return template.number();
  }

  /**
   * One operation that a template makes.
   *
   * @param operation what is done, with its face
   * @param edge the edge of the plate that its follower rides
   * @param offset mm from the edge that is cut to the template's, positive to the waste side: r − R
   */
  public record Service(Routed operation, Loop edge, double offset) {}
}
