package org.bearingline.routing.grain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;
import org.junit.jupiter.api.Test;

/**
 * The plan on parts whose order and blocks are plain to a maker; end grain first is as in print.
 */
class FeedPlanTest {

  private static final Loop BOARD =
      Loop.polygon(
          List.of(new Point(0, 0), new Point(400, 0), new Point(400, 100), new Point(0, 100)));

  private static FeedPlan plan(Contour contour, Approach approach) {
    return FeedPlan.of(
        List.of(new GrainEdge("outside edge", contour)),
        GrainSettings.usual(),
        approach,
        Units.INCH);
  }

  /** Popular Woodworking no. 134: end grain first, then long grain, or clamp a backer. */
  @Test
  void aBoardIsRoutedEndsFirstThenAlong() {
    FeedPlan plan = plan(Contour.routed(BOARD), Approach.usual());
    assertEquals(2, plan.steps().size());
    assertFalse(plan.turnsWork());
    assertEquals(200, plan.steps().get(0).length(), 1e-9);
    assertTrue(
        plan.steps().get(0).stretches().stream().allMatch(s -> s.grain() == GrainClass.END_GRAIN));
    assertEquals(800, plan.steps().get(1).length(), 1e-9);
  }

  @Test
  void blocksStandWhereTheCutterLeavesTheEnds() {
    // Counter-clockwise: up the right end and out at the top, down the left end and out below.
    List<BackingBlock> blocks = plan(Contour.routed(BOARD), Approach.usual()).blocks();
    assertEquals(
        List.of(new Point(400, 100), new Point(0, 0)),
        blocks.stream().map(BackingBlock::at).toList());
    assertEquals(List.of(1, 2), blocks.stream().map(BackingBlock::number).toList());
    assertEquals(1, blocks.get(0).travel().y(), 1e-12);
    assertTrue(blocks.stream().allMatch(BackingBlock::clearedLater));
    List<BackingBlock> table =
        plan(Contour.routed(BOARD), new Approach(Station.TABLE, Face.A)).blocks();
    assertEquals(2, table.size());
    assertTrue(
        table.stream()
            .map(BackingBlock::at)
            .toList()
            .containsAll(List.of(new Point(400, 0), new Point(0, 100))));
  }

  @Test
  void aBreakOutAtASawnEdgeIsNotClearedLater() {
    Contour oneEnd =
        new Contour(BOARD, List.of(EdgeKind.SAWN, EdgeKind.ROUTED, EdgeKind.SAWN, EdgeKind.SAWN));
    List<BackingBlock> blocks = plan(oneEnd, Approach.usual()).blocks();
    assertEquals(1, blocks.size());
    assertFalse(blocks.get(0).clearedLater());
    assertEquals(new Point(400, 100), blocks.get(0).at());
  }

  @Test
  void aDiscIsTurnedOverAndNeedsNoBlock() {
    Contour disc = Contour.routed(Loop.of(Arc.circle(Point.ORIGIN, 100)));
    FeedPlan plan = plan(disc, Approach.usual());
    assertEquals(3, plan.steps().size());
    assertTrue(plan.turnsWork());
    FeedStep last = plan.steps().get(2);
    assertTrue(last.turnsWork());
    assertEquals(Face.B, last.approach().up());
    assertTrue(last.stretches().stream().allMatch(s -> s.grain() == GrainClass.CLEAN));
    assertEquals(Math.toRadians(140) * 100, last.length(), 1e-9);
    double all = plan.steps().stream().mapToDouble(FeedStep::length).sum();
    assertEquals(2 * Math.PI * 100, all, 1e-9, "every stretch once");
    assertTrue(plan.blocks().isEmpty());
    assertEquals(2, plan.badFromBothFaces().size());
  }

  /**
   * A board of 400 × 100 with its upper corners rounded by 10: of the right one's quarter, 70°
   * would tear, 12 mm of 991. The plan, its words and its figure of turning agree.
   */
  @Test
  void soLittleIsNotTurnedOver() {
    Contour rounded =
        Contour.routed(
            Loop.of(
                new Line(new Point(0, 0), new Point(400, 0)),
                new Line(new Point(400, 0), new Point(400, 90)),
                Arc.around(new Point(390, 90), 10, 0, 90),
                new Line(new Point(390, 100), new Point(10, 100)),
                Arc.around(new Point(10, 90), 10, 90, 90),
                new Line(new Point(0, 90), new Point(0, 0))));
    FeedPlan plan = plan(rounded, Approach.usual());
    assertFalse(plan.turnsWork());
    FeedStep last = plan.steps().get(plan.steps().size() - 1);
    assertEquals(Math.toRadians(70) * 10, last.length(), 1e-9);
    assertTrue(last.stretches().stream().allMatch(s -> s.grain() == GrainClass.TEARS));
    assertTrue(last.sentence().contains("hardly worth while"), last.sentence());
    assertTrue(plan.steps().stream().noneMatch(s -> s.sentence().contains("Turn the work over")));
    double all = plan.steps().stream().mapToDouble(FeedStep::length).sum();
    assertEquals(400 + 90 + 10 * Math.PI + 380 + 90, all, 1e-9, "every stretch once");
  }

  @Test
  void anInsideCornerNeedsNoBlock() {
    // A square opening: the cutter runs into the wood at its corners, not out of it.
    Contour opening = Contour.routed(BOARD).clockwise();
    assertTrue(plan(opening, Approach.usual()).blocks().isEmpty());
  }

  @Test
  void workThatWouldOnlyTearIsBegunFromTheOtherFace() {
    // Only the upper edge of a taper is routed: narrow to wide by hand on face A.
    Loop leg =
        Loop.polygon(
            List.of(new Point(0, -40), new Point(400, -40), new Point(400, -20), new Point(0, 40)));
    Contour top =
        new Contour(leg, List.of(EdgeKind.SAWN, EdgeKind.SAWN, EdgeKind.ROUTED, EdgeKind.SAWN));
    FeedPlan plan = plan(top, Approach.usual());
    assertEquals(1, plan.steps().size());
    assertEquals(Face.B, plan.steps().get(0).approach().up());
    assertFalse(plan.turnsWork());
    assertTrue(
        plan.sentences().stream().anyMatch(s -> s.startsWith("Begin with face B up")),
        plan.sentences().toString());
  }

  private static final Loop PULL =
      Loop.of(
          Arc.around(new Point(100, 50), 20, 90, 180),
          new Line(new Point(100, 30), new Point(200, 30)),
          Arc.around(new Point(200, 50), 20, -90, 180),
          new Line(new Point(200, 70), new Point(100, 70)));

  private static FeedPlan board(Face pullFrom) {
    return FeedPlan.of(
        List.of(
            new GrainEdge("outside edge", Contour.routed(BOARD)),
            new GrainEdge("pull", Contour.routed(PULL).clockwise(), Optional.of(pullFrom))),
        GrainSettings.usual(),
        Approach.usual(),
        Units.MM);
  }

  /** A blind recess cannot be reached from the back: what tears stays on its own face. */
  @Test
  void aBlindRecessIsNotTurnedOver() {
    FeedPlan plan = board(Face.A);
    assertFalse(plan.turnsWork());
    assertEquals(3, plan.steps().size());
    FeedStep last = plan.steps().get(2);
    assertTrue(last.stretches().stream().allMatch(s -> s.grain() == GrainClass.TEARS));
    assertTrue(last.stretches().stream().allMatch(s -> s.edge().equals("pull")));
    assertEquals(2 * Math.toRadians(70) * 20, last.length(), 1e-9);
    double all = plan.steps().stream().mapToDouble(FeedStep::length).sum();
    assertEquals(1000 + PULL.length(), all, 1e-9, "every stretch once");
  }

  @Test
  void aRecessInTheBackWaitsUntilTheWorkIsTurned() {
    FeedPlan plan = board(Face.B);
    List<Face> faces = plan.steps().stream().map(step -> step.approach().up()).toList();
    assertEquals(List.of(Face.A, Face.A, Face.B, Face.B, Face.B), faces);
    assertEquals(
        List.of(false, false, true, false, false),
        plan.steps().stream().map(FeedStep::turnsWork).toList());
    double all = plan.steps().stream().mapToDouble(FeedStep::length).sum();
    assertEquals(1000 + PULL.length(), all, 1e-9, "every stretch once");
    assertEquals("Turn the work over; with", plan.steps().get(2).sentence().substring(0, 24));
  }

  @Test
  void wordsAreInTheReadersUnits() {
    FeedPlan plan = plan(Contour.routed(BOARD), Approach.usual());
    String all = String.join(" ", plan.sentences()) + plan.steps().get(0).sentence();
    assertFalse(all.contains("mm"), all);
    assertTrue(all.contains(" in"), all);
    assertEquals(
        "Of ≈ 39-3/8 in of routed edge, with the router in the hand on face A, 80 % is along the"
            + " grain, 20 % is end grain.",
        plan.sentences().get(0));
  }

  @Test
  void nothingRoutedAsksForNothing() {
    FeedPlan plan = plan(Contour.sawn(BOARD), Approach.usual());
    assertTrue(plan.steps().isEmpty());
    assertTrue(plan.sentences().isEmpty());
  }
}
