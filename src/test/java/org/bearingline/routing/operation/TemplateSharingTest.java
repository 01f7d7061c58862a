package org.bearingline.routing.operation;

import static org.bearingline.routing.operation.Benches.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.GrooveExtent;
import org.junit.jupiter.api.Test;

/** Which operations share a template: cases worked out by hand. */
class TemplateSharingTest {

  private static final Part BOARD = Benches.routedBoard(400, 200);

  private static void says(OperationPlan plan, String words) {
    assertTrue(
        plan.sentences().stream().anyMatch(one -> one.contains(words)),
        () -> plan.sentences().toString());
  }

  @Test
  void equalOffsetsShareAnEdge() {
    // R − r is 1/8 in for both tools.
    Target pull = Benches.box("pull", 200, 100, 100, 40, 12);
    OperationPlan plan =
        Benches.plan(
            BOARD,
            Benches.recess("rough", Benches.collar(INCH / 2, 0.75 * INCH), pull),
            Benches.recess("fine", Benches.collar(INCH / 4, INCH / 2), pull));
    assertEquals(1, plan.templates().size());
    assertEquals(1, plan.templates().get(0).template().plate().openings().size());
    assertTrue(plan.sentences().isEmpty());
  }

  @Test
  void edgesOfAllFacesGoIntoOnePlateWhereTheyLieApart() {
    OperationPlan plan =
        Benches.plan(
            BOARD,
            Benches.recess(
                "pull",
                Benches.collar(INCH / 2, 0.75 * INCH),
                Benches.box("pull", 200, 140, 100, 40, 12)),
            Benches.recess(
                "groove",
                Face.B,
                Benches.flush(INCH / 4),
                Benches.box("groove", 200, 30, 340, 8, 4),
                6),
            Benches.edge("outside", BOARD, Benches.flush(INCH / 2)));
    assertEquals(1, plan.templates().size());
    PlannedTemplate template = plan.templates().get(0);
    assertEquals(2, template.template().plate().openings().size());
    assertEquals(BOARD.contour().loop().bounds(), template.template().plate().bounds());
    assertEquals(List.of("outside edge", "pull", "groove"), template.template().serves());
    assertTrue(template.sentences().contains("On face B, with side B up, it makes groove."));
    assertFalse(template.mirroredPrint());
  }

  @Test
  void openingsTooNearEachOtherGetTwoPlates() {
    // 10 mm between the openings; a bridge of less than 12 mm bends.
    OperationPlan plan =
        Benches.plan(
            BOARD,
            Benches.recess("left", Benches.flush(12.7), Benches.box("left", 100, 100, 80, 60, 10)),
            Benches.recess(
                "right", Benches.flush(12.7), Benches.box("right", 190, 100, 80, 60, 10)));
    assertEquals(2, plan.templates().size());
    says(
        plan,
        "Right has template 2 of its own: on template 1, only ≈ 25/64 in of plate would stay between it and the opening of left.");
  }

  @Test
  void anOpeningInsideAnotherNamesTheCollarOfTheKitThatMakesOneServe() {
    // Ledge 1/8 in wide, both flush: R' = 1/4 + 0 + 1/8 = 3/8, a 3/4 in collar, which the kit has.
    Target plate = Benches.box("plate", 200, 100, 120, 90, 20);
    Target inner = Target.opening("opening", Rim.inside(Head.of("o", Face.A), plate, INCH / 8));
    OperationPlan plan =
        Benches.plan(
            BOARD,
            new Ledge(Head.of("ledge", Face.A), Benches.flush(INCH / 2), plate, 6),
            new ThroughOpening(Head.of("opening", Face.A), Benches.flush(INCH / 2), inner));
    assertEquals(2, plan.templates().size());
    says(plan, "lie in each other");
    says(
        plan,
        "The 3/4 in collar of the usual kit with the 1/2 in bit makes opening from template 1 too");
  }

  @Test
  void whereTheKitLacksTheCollarAnotherPairOfItIsNamed() {
    // Ledge 3/16 in: R' = 1/4 + 3/16, a 7/8 in collar. The kit has none, but 1/4 in with 5/8 in
    // does.
    Target plate = Benches.box("plate", 200, 100, 120, 90, 20);
    Target inner =
        Target.opening("opening", Rim.inside(Head.of("o", Face.A), plate, 3.0 / 16 * INCH));
    OperationPlan plan =
        Benches.plan(
            BOARD,
            new Ledge(Head.of("ledge", Face.A), Benches.flush(INCH / 2), plate, 6),
            new ThroughOpening(Head.of("opening", Face.A), Benches.flush(INCH / 2), inner));
    says(plan, "A 7/8 in collar with the 1/2 in bit would make opening from template 1 too");
    says(plan, "its 3/4 in collar with a 3/8 in bit does the same");
  }

  @Test
  void aSharpOpeningSharesToo() {
    // Template edges differ at the corners, but the cut edges are the same.
    Target plate = Benches.box("plate", 200, 100, 120, 90, 0);
    Target inner = Benches.box("opening", 200, 100, 120 - INCH / 4, 90 - INCH / 4, 0);
    OperationPlan plan =
        Benches.plan(
            BOARD,
            new Ledge(Head.of("ledge", Face.A), Benches.flush(INCH / 2), plate, 6),
            new ThroughOpening(
                Head.of("opening", Face.A), Benches.collar(INCH / 2, 0.75 * INCH), inner));
    assertEquals(1, plan.templates().size());
  }

  @Test
  void anEdgeWithAnotherOffsetSaysByHowMuch() {
    OperationPlan plan =
        Benches.plan(
            BOARD,
            Benches.edge("first", BOARD, Benches.flush(INCH / 2)),
            Benches.edge("second", BOARD, Benches.collar(INCH / 4, INCH / 2)));
    assertEquals(2, plan.templates().size());
    says(plan, "the edge would have to lie 1/8 in further in");
    says(
        plan,
        "A 1/4 in bearing with the 1/4 in bit would make second from template 1 too; the usual kit has none");
  }

  private static EdgeGroove groove(EdgeGroove.Rides rides, double bearing, OptionalDouble into) {
    return new EdgeGroove(
        Head.of("groove", Face.A),
        new SlotCutter(new Cutter(2 * INCH), new Follower.Bearing(bearing), 6),
        Target.outside(BOARD.contour()),
        new GrooveExtent(
            "outside edge", Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
        rides,
        6,
        into);
  }

  @Test
  void aGrooveOnTheWorksOwnEdgeNeedsNoTemplate() {
    OperationPlan plan =
        Benches.plan(BOARD, groove(EdgeGroove.Rides.WORK, INCH, OptionalDouble.empty()));
    assertTrue(plan.templates().isEmpty());
    // Published: cutter 2, bearing 1 cuts 1/2 deep.
    assertEquals(INCH / 2, plan.operations().get(0).groove().orElseThrow().depthWanted(), 1e-9);
  }

  @Test
  void aGrooveOnTheTemplateSharesThatOfTheEdge() {
    // Edge: 1/4 in bit in a 1/2 in collar, template 1/8 in inside. Groove: 1/2 + 1/8 deep.
    EdgeOperation edge = Benches.edge("edge", BOARD, Benches.collar(INCH / 4, INCH / 2));
    OperationPlan plan =
        Benches.plan(BOARD, edge, groove(EdgeGroove.Rides.TEMPLATE, INCH, OptionalDouble.empty()));
    assertEquals(1, plan.templates().size());
    assertEquals(0.625 * INCH, plan.operations().get(1).groove().orElseThrow().depthWanted(), 1e-9);
  }

  @Test
  void aGrooveOfAnotherDepthNamesItsBearing() {
    // Wanted 1/2: R' = 1 + 1/8 − 1/2 = 5/8, a 1-1/4 in bearing.
    EdgeOperation edge = Benches.edge("edge", BOARD, Benches.collar(INCH / 4, INCH / 2));
    OperationPlan plan =
        Benches.plan(
            BOARD, edge, groove(EdgeGroove.Rides.TEMPLATE, INCH, OptionalDouble.of(INCH / 2)));
    assertEquals(2, plan.templates().size());
    says(
        plan, "A 1-1/4 in bearing with the 2 in slot cutter would make groove from template 1 too");
    assertEquals(INCH / 2, plan.operations().get(1).groove().orElseThrow().depthWanted(), 1e-9);
    Bounds second = plan.templates().get(1).template().plate().bounds();
    assertEquals(400, second.width(), 1e-6, "flush, for 1/2 is what the cutter gives");
  }

  @Test
  void thePartAsItStandsHasItsUsualOperations() {
    Loop opening = RoundedBox.of(new Point(200, 100), 90, 60, 15, 0);
    Part part =
        new Part(
            "board",
            "a board",
            BOARD.contour(),
            List.of(
                new Cavity(
                    "window",
                    Cavity.Kind.THROUGH,
                    Contour.routed(opening),
                    OptionalDouble.empty())),
            List.of(),
            List.of());
    List<Operation> usual = UsualOperations.of(part, Benches.flush(INCH / 2));
    assertEquals(List.of("outside edge", "window"), usual.stream().map(Operation::name).toList());
    assertTrue(usual.get(1) instanceof ThroughOpening);
    OperationPlan plan = Benches.plan(part, usual.toArray(Operation[]::new));
    assertEquals(1, plan.templates().size());
    assertEquals(1, Benches.template(plan, "window"));
  }
}
