package org.bearingline.job;

import java.util.Optional;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.Tooling;

/**
 * A part of a job with everything routing found of it.
 *
 * @param order what was asked for
 * @param result what it needs
 * @param kit whose tools were looked at
 * @param plan of its operations; empty where the job names none
 */
record WorkedPart(PartOrder order, RoutingResult result, Kit kit, Optional<OperationPlan> plan) {

  static WorkedPart of(PartOrder order) {
    Wishes wishes = order.wishes();
    Kit kit = Tools.kit(wishes);
    Part part = order.shape().part().named(order.name());
    Cutter cutter = Tools.cutter(wishes, part, kit, LargestCutter.of(part));
    Follower follower = Tools.follower(wishes, cutter, kit);
    RoutingSettings settings = Settings.routing(wishes, cutter, follower);
    if (order.operations().isWritten()) {
      OperationPlan plan = plan(order, part, new Tooling(cutter, follower), settings, kit);
      return new WorkedPart(order, plan.asOne(settings, kit), kit, Optional.of(plan));
    }
    return new WorkedPart(order, Routing.workOut(part, settings, kit), kit, Optional.empty());
  }

  private static OperationPlan plan(
      PartOrder order, Part part, Tooling usual, RoutingSettings settings, Kit kit) {
    OperationFile file = order.operations();
    OperationTools tools = new OperationTools(order.wishes(), kit);
    try {
      return OperationPlan.of(
          part, file.operations(part, order.shape(), usual, tools), settings, kit, file.faces());
    } catch (Problem refused) {
      throw file.located(refused);
    }
  }
}
