package org.bearingline.job;

import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.part.Part;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;

/**
 * A part of a job with everything routing found of it.
 *
 * @param order what was asked for
 * @param result what it needs
 * @param kit whose tools were looked at
 */
record WorkedPart(PartOrder order, RoutingResult result, Kit kit) {

  static WorkedPart of(PartOrder order) {
    Wishes wishes = order.wishes();
    Kit kit = Tools.kit(wishes);
    Part part = order.shape().part().named(order.name());
    Cutter cutter = Tools.cutter(wishes, part, kit, LargestCutter.of(part));
    Follower follower = Tools.follower(wishes, cutter, kit);
    RoutingResult result = Routing.workOut(part, Settings.routing(wishes, cutter, follower), kit);
    return new WorkedPart(order, result, kit);
  }
}
