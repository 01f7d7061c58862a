package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.kit.Kit;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Template;

/**
 * Every operation of a part and the fewest templates found that make them.
 *
 * @param part the part
 * @param operations in the order they were given
 * @param templates numbered from 1
 * @param faces how the templates lie on both faces
 * @param sentences what shares a template, what does not, and why
 */
public record OperationPlan(
    Part part,
    List<PlannedOperation> operations,
    List<PlannedTemplate> templates,
    FacePlan faces,
    List<String> sentences) {

  public OperationPlan {
    operations = List.copyOf(operations);
    templates = List.copyOf(templates);
    sentences = List.copyOf(sentences);
  }

  /**
   * The plan of a single part with the usual registration.
   *
   * @param settings of the stock and the plate; each operation brings its own bit and follower
   * @param kit whose tools are named where another would save a template
   * @throws org.bearingline.problem.Problem where an operation cannot be worked, at its place
   */
  public static OperationPlan of(
      Part part, List<Operation> operations, RoutingSettings settings, Kit kit) {
    return of(part, operations, settings, kit, FaceWishes.NONE);
  }

  /** The plan with what the maker wishes of faces and hands. */
  public static OperationPlan of(
      Part part, List<Operation> operations, RoutingSettings settings, Kit kit, FaceWishes wishes) {
    return new PlanMaker(part, operations, settings, kit, wishes).plan();
  }

  /**
   * All operations as one result for the whole part, as seen from face A: for a single drawing and
   * for figures of the whole. Its cutter and follower are those of the edge, else of the first
   * routed operation.
   */
  public RoutingResult asOne(RoutingSettings settings, Kit kit) {
    List<Template> plates = templates.stream().map(PlannedTemplate::template).toList();
    return JoinedRouting.of(WholePart.of(this), operations, plates, settings, kit);
  }
}
