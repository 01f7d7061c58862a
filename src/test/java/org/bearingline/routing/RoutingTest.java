package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SawBlade;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RoutingTest {

  private static final double EXACT = 1e-6;

  private static RoutingResult flush(Part part, double diameter) {
    Cutter cutter = new Cutter(diameter);
    return Routing.workOut(
        part, RoutingSettings.usual(cutter, Follower.flush(cutter)), Kit.usual());
  }

  private static Part shape(String name) {
    return ShapeLibrary.builtIn().find(name).measured(Map.of(), Optional.empty()).part();
  }

  /** Each shape of the library, flush and with a collar: true to the line. */
  @TestFactory
  Stream<DynamicTest> everyShapeComesOutTrueToItsLine() {
    return ShapeLibrary.builtIn().names().stream()
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      Part part = shape(name);
                      if (part.contour().isAll(EdgeKind.SAWN) && part.cavities().isEmpty()) {
                        // Nothing to rout: no template, and nothing that could be off its line.
                        assertTrue(flush(part, 9.525).templates().isEmpty());
                        return;
                      }
                      checkTrue(flush(part, 9.525));
                      checkTrue(
                          Routing.workOut(
                              part,
                              RoutingSettings.usual(new Cutter(9.525), new Follower.Collar(15.875))
                                  .withBlade(SawBlade.ofWidth(6.35))
                                  .withThickness(19),
                              Kit.usual()));
                    }));
  }

  private static void checkTrue(RoutingResult result) {
    Proof proof = result.proof().orElseThrow();
    assertTrue(proof.samples() > 50, "samples " + proof.samples());
    assertTrue(proof.maxDeviation() < EXACT, proof.toString());
    assertTrue(result.templates().size() >= 1);
    assertTrue(result.cutterCentre().size() >= 1);
    assertTrue(result.feed().size() >= 1);
    assertTrue(result.cautions().size() >= 5);
  }

  @Test
  void theCentreRunsABitsRadiusFromTheEdge() {
    RoutingResult result = flush(Parts.liftRail(20), 12.7);
    assertEquals(1, result.cutterCentre().size());
    Outline wood = Outline.of(Parts.liftRail(20).contour().loop());
    for (Primitive piece : result.cutterCentre().get(0).path().primitives()) {
      Point p = piece.middle();
      if (p.x() > 0 && p.x() < 600) {
        assertEquals(6.35, wood.distanceTo(p), EXACT);
      }
    }
    assertTrue(result.cutterCentre().get(0).path().start().x() < -39);
  }

  @Test
  void theProofFindsATemplateThatIsOff() {
    Part part = Parts.liftRail(20);
    RoutingResult good = flush(part, 12.7);
    Template template = good.templates().get(0);
    Template moved =
        new Template(
            1,
            template.title(),
            template.plate().transformed(Similarity.translation(0, 0.03)),
            template.workingEdges(),
            template.serves(),
            template.offset(),
            template.notes());
    Cutter cutter = new Cutter(12.7);
    Proof proof = Proof.of(part, List.of(moved), cutter, Follower.flush(cutter), List.of());
    assertEquals(0.03, proof.maxDeviation(), 1e-6);
    Proof fatter =
        Proof.of(part, good.templates(), new Cutter(13), Follower.flush(cutter), List.of());
    assertEquals(0.15, fatter.maxDeviation(), 1e-6);
  }

  @Test
  void theProofIsSilentOnlyAboutWhatIsNamed() {
    Part part = Parts.liftRail(12.7);
    RoutingResult result = flush(part, 31.75);
    assertTrue(result.proof().orElseThrow().maxDeviation() < EXACT);
    Cutter cutter = new Cutter(31.75);
    Proof untold = Proof.of(part, result.templates(), cutter, Follower.flush(cutter), List.of());
    assertEquals(result.reach().leftovers().get(0).depth(), untold.maxDeviation(), 0.01);
  }

  @Test
  void theKitsBitsThatLeaveNothingAreNamed() {
    List<Double> diameters =
        flush(Parts.liftRail(9.6), 12.7).bits().stream().map(Bit::diameter).toList();
    assertTrue(diameters.contains(19.05));
    assertTrue(diameters.stream().allMatch(d -> d <= 19.2), diameters.toString());
    assertEquals(List.of(), flush(Parts.notched(90), 12.7).bits());
  }

  /** Hand-held: counter-clockwise round an outside edge, clockwise round an opening. */
  @Test
  void feedArrowsRunAgainstTheBitsTurn() {
    // Woodworking programme sheet "Direction of feed"; WOOD, "With a router, you need direction".
    RoutingResult bar = flush(Walk.part("bar", Parts.roundedRectangle(400, 100, 20)), 12.7);
    assertTrue(turnAbout(bar.feed()) > 0);
    RoutingResult board = flush(Parts.boardWith(Parts.roundedRectangle(200, 100, 20)), 12.7);
    assertTrue(turnAbout(board.feed()) < 0);
    // A straight lower edge, wood above: left to right, as the router manuals say.
    FeedArrow first = flush(Parts.liftRail(20), 12.7).feed().get(0);
    assertEquals(0, first.degrees(), EXACT);
    assertTrue(first.at().y() < 0);
  }

  private static double turnAbout(List<FeedArrow> arrows) {
    double sum = 0;
    for (FeedArrow arrow : arrows) {
      sum += arrow.at().cross(Point.polar(1, arrow.degrees()));
    }
    return sum;
  }

  @Test
  void feedTurnsRoundWhenThePartIsMirrored() {
    Part part = Parts.liftRail(20);
    Contour mirrored =
        part.contour().transformed(Similarity.mirror(new Point(300, 0), new Point(300, 1)));
    FeedArrow first = flush(Walk.part("mirrored", mirrored), 12.7).feed().get(0);
    // Seen from above the wood still lies on the left, so the mirrored edge is fed left to right.
    assertEquals(0, first.degrees(), EXACT);
  }

  @Test
  void aPartRoutedAllRoundNeedsNoMargins() {
    Part bar = Walk.part("bar", Parts.roundedRectangle(200, 60, 15));
    RoutingResult result = flush(bar, 12.7);
    assertEquals(bar.contour().loop().bounds(), result.templates().get(0).plate().bounds());
    assertTrue(result.templates().get(0).workingEdges().get(0).isClosed());
    Path line = result.roughLine().orElseThrow().paths().get(0);
    assertTrue(line.isClosed());
    double a = result.settings().allowance();
    // Steiner's formula for a convex outline: perimeter L + 2πa.
    assertEquals(bar.contour().loop().length() + 2 * Math.PI * a, line.length(), EXACT);
  }

  @Test
  void theRoughLineLeavesTheWoodAtTheSawnEnds() {
    RoughLine line = flush(Parts.liftRail(20), 12.7).roughLine().orElseThrow();
    assertEquals(1, line.paths().size());
    assertEquals(-10, line.paths().get(0).start().x(), EXACT);
    assertEquals(610, line.paths().get(0).end().x(), EXACT);
    assertEquals(-25.4 / 16, line.paths().get(0).start().y(), EXACT);
    // Waste between parallels: outside arcs gain what hollow ones lose, so a times the edge's
    // length.
    Loop loop = Parts.liftRail(20).contour().loop();
    double edge = loop.length() - 600 - 2 * 90;
    double a = 25.4 / 16;
    assertEquals(a * edge, line.wasteArea(), 1e-5);
  }

  @Test
  void aBladeThatCannotFollowBridgesEveryHollow() {
    Part rail = Parts.liftRail(12.7);
    Cutter cutter = new Cutter(12.7);
    RoughLine line =
        Routing.workOut(
                rail,
                RoutingSettings.usual(cutter, Follower.flush(cutter))
                    .withBlade(SawBlade.ofWidth(9.525)),
                Kit.usual())
            .roughLine()
            .orElseThrow();
    assertEquals(2, line.bridged().size());
    assertEquals(List.of(1, 2), line.bridged().stream().map(RoughLine.Bridge::number).toList());
    assertTrue(line.bridged().get(0).at().x() < line.bridged().get(1).at().x());
    assertTrue(line.outsideTurns().size() >= 2);
    assertTrue(
        line.notes().get(0).contains("saw straight on out of the wood"), line.notes().toString());
    long hollows =
        line.paths().get(0).primitives().stream()
            .filter(p -> p instanceof Arc arc && Math.abs(arc.radius() - 38.1) < 1e-9)
            .count();
    assertEquals(2, hollows);
  }

  @Test
  void cautionsFitTheBit() {
    List<String> small = flush(Parts.liftRail(20), 12.7).cautions();
    assertTrue(small.stream().anyMatch(c -> c.contains("24,000")), small.toString());
    assertTrue(small.stream().noneMatch(c -> c.contains("router table only")));
    List<String> large = flush(Parts.liftRail(20), 28.575).cautions();
    assertTrue(large.get(0).contains("router table only"), large.toString());
    assertTrue(large.stream().anyMatch(c -> c.contains("18,000")));
    for (String words : List.of("eye", "dust", "manual", "counter-clockwise", "instructor")) {
      assertTrue(small.stream().anyMatch(c -> c.contains(words)), words);
    }
    List<String> tiny =
        flush(Walk.part("knob", Parts.roundedRectangle(60, 40, 12)), 12.7).cautions();
    assertTrue(tiny.stream().anyMatch(c -> c.contains("small")), tiny.toString());
  }

  @Test
  void aCollarTakesItsInsideFromTheKit() {
    Problem problem =
        assertThrows(
            Problem.class,
            () ->
                Routing.workOut(
                    Parts.liftRail(20),
                    RoutingSettings.usual(new Cutter(6.35), new Follower.Collar(7.9375)),
                    Kit.usual()));
    assertTrue(problem.getMessage().contains("does not pass"), problem.getMessage());
  }

  @Test
  void anAllowanceOfNothingIsRefused() {
    Cutter cutter = new Cutter(12.7);
    RoutingSettings settings =
        RoutingSettings.usual(cutter, Follower.flush(cutter)).withAllowance(0);
    assertThrows(Problem.class, () -> Routing.workOut(Parts.liftRail(20), settings, Kit.usual()));
    assertThrows(Problem.class, () -> settings.withRunOut(Double.NaN));
    assertThrows(Problem.class, () -> settings.withMargin(-1));
    assertThrows(Problem.class, () -> settings.withAllowance(1e12));
  }

  @Test
  void turningAndMovingAPartChangesNothing() {
    Part part = Parts.notched(75);
    RoutingResult here = flush(part, 15.875);
    Similarity away =
        Similarity.rotation(37, new Point(11, -5)).then(Similarity.translation(1234, -777));
    RoutingResult there = flush(Walk.part("turned", part.contour().transformed(away)), 15.875);
    Leftover before = here.reach().leftovers().get(0);
    Leftover after = there.reach().leftovers().get(0);
    assertEquals(before.area(), after.area(), EXACT);
    assertEquals(before.depth(), after.depth(), EXACT);
    assertTrue(away.apply(before.at()).distanceTo(after.at()) < EXACT);
    assertEquals(
        here.templates().get(0).plate().area(), there.templates().get(0).plate().area(), 1e-3);
    assertEquals(
        here.roughLine().orElseThrow().wasteArea(),
        there.roughLine().orElseThrow().wasteArea(),
        1e-4);
  }

  @Test
  void theSameInputGivesTheSameResult() {
    assertEquals(flush(Parts.liftRail(12.7), 31.75), flush(Parts.liftRail(12.7), 31.75));
  }

  @Test
  void aTenonLeavesTheRunOutFree() {
    Part rail =
        Walk.from(0, 0, 0)
            .ahead(200)
            .turn(20)
            .arc(200, -40)
            .turn(20)
            .to(500, 0)
            .sawn()
            .to(500, 15)
            .to(530, 15)
            .to(530, 65)
            .to(500, 65)
            .to(500, 80)
            .to(0, 80)
            .part("tenoned");
    Template template = flush(rail, 12.7).templates().get(0);
    Bounds box = template.plate().bounds();
    assertEquals(0, box.minY(), EXACT);
    assertTrue(box.maxX() >= 530 + 40 - EXACT);
    assertEquals(List.of(), template.notes());
  }

  @Test
  void aPartWithNothingRoutedHasNoTemplate() {
    RoutingResult result = flush(Walk.part("board", Parts.board(300, 200)), 12.7);
    assertEquals(List.of(), result.templates());
    assertTrue(result.proof().isEmpty());
    assertTrue(result.roughLine().isEmpty());
    assertTrue(result.reach().isComplete());
    assertTrue(result.largestCutter().diameter().isEmpty());
  }
}
