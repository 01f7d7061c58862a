package org.bearingline.routing.operation;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;
import org.junit.jupiter.api.Test;

class OperationPlanTest {
  static final double IN = 25.4;

  static Part board(double w, double h) {
    return new Part(
        "board",
        "a board",
        Contour.routed(Loop.rectangle(new Bounds(0, 0, w, h))),
        List.of(),
        List.of(),
        List.of());
  }

  static Tooling tool(double bit, double collar) {
    return new Tooling(
        new Cutter(bit),
        collar == bit ? Follower.flush(new Cutter(bit)) : new Follower.Collar(collar));
  }

  static RoutingSettings settings() {
    return RoutingSettings.usual(new Cutter(12.7), Follower.flush(new Cutter(12.7)))
        .withThickness(19);
  }

  @Test
  void look() {
    Part part = board(400, 150);
    Target out = Target.outside(part.contour());
    Target pull =
        Target.opening("pull", Contour.routed(RoundedBox.of(new Point(200, 100), 100, 30, 10, 0)));
    Target led =
        Target.opening("plate", Contour.routed(RoundedBox.of(new Point(60, 75), 80, 80, 12, 0)));
    List<Operation> ops =
        List.of(
            new EdgeOperation(
                Head.of("outside", Face.A), tool(12.7, 12.7), out, OptionalDouble.empty()),
            new Recess(Head.of("pull", Face.A), tool(12.7, 19.05), pull, 8),
            StoppedSlot.between(
                Head.of("bottom-groove", Face.B),
                tool(6.35, 7 / 16.0 * IN),
                new Point(30, 20),
                new Point(370, 20),
                6.35,
                6),
            new Ledge(Head.of("ledge", Face.A), tool(12.7, 12.7), led, 6),
            ThroughOpening.inside(Head.of("opening", Face.A), tool(12.7, 12.7), led, 10));
    OperationPlan plan = OperationPlan.of(part, ops, settings(), Kit.usual());
    plan.sentences().forEach(System.out::println);
    plan.faces().sentences().forEach(System.out::println);
    plan.templates()
        .forEach(
            t -> {
              System.out.println(t.template().title() + " " + t.sentences() + t.eitherSideUp());
            });
    plan.operations()
        .forEach(
            o ->
                System.out.println(
                    o.operation().name()
                        + " "
                        + o.template()
                        + " "
                        + o.made().area()
                        + o.sentences()
                        + o.routing().map(r -> r.proof().get().maxDeviation())));
  }
}
