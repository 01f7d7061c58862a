package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.kit.Kit;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;

/**
 * Every operation of a part and the fewest templates found that make them.
 *
 * @param part the part
 * @param operations in the order they were given
 * @param templates numbered from 1
 * @param sentences what is shared and what is not, and why
 */
public record OperationPlan(
    Part part,
    List<PlannedOperation> operations,
    List<PlannedTemplate> templates,
    List<String> sentences) {

  public OperationPlan {
    operations = List.copyOf(operations);
    templates = List.copyOf(templates);
    sentences = List.copyOf(sentences);
  }

  /**
   * The plan.
   *
   * @param settings of the stock and the plate; each operation brings its own bit and follower
   * @param kit whose tools are named where another would save a template
   * @throws org.bearingline.problem.Problem where an operation cannot be worked, at its place
   */
  public static OperationPlan of(
      Part part, List<Operation> operations, RoutingSettings settings, Kit kit) {
    throw new UnsupportedOperationException();
  }
}
