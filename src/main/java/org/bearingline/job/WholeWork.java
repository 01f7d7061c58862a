package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.OperationMeetings;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedOperation;
import org.bearingline.routing.setup.OperationOrder;
import org.bearingline.routing.setup.OrderStep;
import org.bearingline.routing.setup.Precedence;

/**
 * Everything that is done to a part whose operations a job names.
 *
 * @param plan operations, templates and faces
 * @param order the order that changes bits least
 * @param operations in that order, set up
 * @param reasons why one operation waits for another
 * @param meetings sentences on operations that take the same wood, hardly on purpose
 */
record WholeWork(
    OperationPlan plan,
    OperationOrder order,
    List<WorkedOperation> operations,
    List<String> reasons,
    List<String> meetings) {

  WholeWork {
    meetings = List.copyOf(meetings);
    operations = List.copyOf(operations);
    reasons = List.copyOf(reasons);
  }

  static WholeWork of(OperationPlan plan, OperationSetups setups) {
    List<Operation> all = plan.operations().stream().map(PlannedOperation::operation).toList();
    OperationOrder order = OperationOrder.of(Precedence.steps(all, setups.units()));
    List<WorkedOperation> worked = new ArrayList<>();
    for (OrderStep step : order.steps()) {
      worked.add(setups.of(worked.size() + 1, named(plan, step.name())));
    }
    return new WholeWork(
        plan,
        order,
        worked,
        Precedence.reasons(all),
        OperationMeetings.sentences(all, setups.units()));
  }

  /** The same with its templates made another way. */
  WholeWork with(OperationPlan other) {
    return new WholeWork(other, order, operations, reasons, meetings);
  }

  private static PlannedOperation named(OperationPlan plan, String name) {
    return plan.operations().stream()
        .filter(planned -> planned.operation().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Those that a template makes, in working order. */
  List<WorkedOperation> from(int template) {
    return operations.stream()
        .filter(one -> one.planned().template().orElse(0) == template)
        .toList();
  }

  /** Those that no template makes: a groove along the finished edge, and what is drilled. */
  List<WorkedOperation> withoutTemplate() {
    return from(0);
  }

  /** Names of the shape's openings that no operation makes. */
  List<String> left() {
    return FinishedPart.left(
        plan.part(), operations.stream().map(WorkedOperation::operation).toList());
  }

  boolean worksFaceB() {
    return operations.stream().anyMatch(one -> one.operation().face() == Face.B);
  }
}
