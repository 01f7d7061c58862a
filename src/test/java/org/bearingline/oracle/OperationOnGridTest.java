package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.HingeLeaf;
import org.bearingline.routing.operation.Hollow;
import org.bearingline.routing.operation.Ledge;
import org.bearingline.routing.operation.Mortise;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedTemplate;
import org.bearingline.routing.operation.StoppedSlot;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.ThroughOpening;
import org.bearingline.routing.operation.Tooling;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Slots, ledges, mortises and hinge leaves made on a grid of cells from the finished template: the
 * follower's centre keeps R away from the plate, the cutter takes all within r of such a centre.
 */
class OperationOnGridTest {

  private static final int CELLS = 500;

  private static final Part BOARD =
      new Part(
          "board",
          "a board",
          Contour.sawn(Loop.rectangle(new Bounds(0, 0, 300, 200))),
          List.of(),
          List.of(),
          List.of());

  private static Tooling tool(double bit, double follower) {
    return new Tooling(
        new Cutter(bit),
        follower > bit ? new Follower.Collar(follower) : new Follower.Bearing(follower));
  }

  private static Hollow slot(Tooling tool) {
    return StoppedSlot.between(
        Head.of("slot", Face.A), tool, new Point(60, 50), new Point(220, 110), 16, 6);
  }

  private static Target opening() {
    return StoppedSlot.target(
        Head.of("opening", Face.A), new Point(110, 100), new Point(190, 100), 60);
  }

  @TestFactory
  Stream<DynamicTest> whatIsCutAgreesWithTheGrid() {
    return Stream.of(
            slot(tool(12, 12)),
            slot(tool(12, 20)),
            slot(tool(10, 13)),
            slot(tool(14, 9)),
            Ledge.around(Head.of("ledge", Face.A), tool(12.7, 19.05), BOARD, opening(), 10, 6),
            ThroughOpening.inside(Head.of("inner", Face.A), tool(9.5, 15.9), opening(), 12),
            Mortise.about(
                Head.of("mortise", Face.A),
                tool(9.525, 12.7),
                new Point(150, 100),
                70,
                14,
                30,
                OptionalDouble.of(12)),
            HingeLeaf.at(
                Head.of("leaf", Face.A),
                tool(9.525, 15.875),
                BOARD,
                BoardSide.RIGHT,
                90,
                64,
                20,
                4.7625,
                2.5))
        .map(
            hollow ->
                DynamicTest.dynamicTest(hollow.word() + " " + hollow.tool(), () -> agrees(hollow)));
  }

  private static void agrees(Hollow hollow) {
    Cutter usual = new Cutter(12.7);
    OperationPlan plan =
        OperationPlan.of(
            BOARD,
            List.of(hollow),
            RoutingSettings.usual(usual, Follower.flush(usual)).withThickness(19),
            Kit.usual());
    PlannedTemplate template = plan.templates().get(0);
    Region opening = Region.of(Outline.of(template.services().get(0).edge().counterClockwise()));
    GridSimulation cut =
        GridSimulation.of(opening, 5, CELLS)
            .erode(hollow.tool().follower().radius() - 1e-4)
            .dilate(hollow.tool().cutter().radius() - 1e-4);
    assertTrue(cut.decided() > 0.9, "decided " + cut.decided());
    assertEquals(List.of(), cut.disagreements(plan.operations().get(0).made()));
    Region designed = Region.of(Outline.of(hollow.edge().contour().loop().counterClockwise()));
    if (hollow.edge().contour().isAll(EdgeKind.ROUTED)) {
      assertEquals(designed.area(), plan.operations().get(0).made().area(), 0.05);
    }
  }
}
