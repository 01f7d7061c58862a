package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SawBlade;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the reach says against a router simulated on a grid of dots over the finished template. */
class RoutingSimulationTest {

  private static final double PITCH = 0.2;

  private static Contour scalloped() {
    return Walk.from(-60, -45, 0)
        .ahead(20)
        .arc(9, -150)
        .arc(6, 150)
        .ahead(30)
        .turn(50)
        .ahead(18)
        .turn(60)
        .arc(30, 40)
        .arc(7, -80)
        .ahead(9)
        .turn(95)
        .to(-62, 42)
        .close();
  }

  @TestFactory
  Stream<DynamicTest> whatIsLeftAgreesWithTheGrid() {
    return Stream.of(
            Walk.part("scalloped", scalloped()),
            Walk.part("turned", rotated(scalloped(), 33)),
            Parts.boardWith(Parts.rectangle(70, 45)),
            Parts.boardWith(scalloped()))
        .flatMap(
            part ->
                Stream.of(
                    check(part, 12.7, new Follower.Bearing(12.7)),
                    check(part, 19.05, new Follower.Bearing(12.7)),
                    check(part, 9.525, new Follower.Collar(15.875))));
  }

  private static Contour rotated(Contour contour, double degrees) {
    return contour.transformed(Similarity.rotation(degrees, new Point(5, 7)));
  }

  private static DynamicTest check(Part part, double bit, Follower follower) {
    return DynamicTest.dynamicTest(
        part.name() + " bit " + bit + " " + follower.kind() + " " + follower.diameter(),
        () -> compare(part, bit, follower));
  }

  private static void compare(Part part, double bit, Follower follower) {
    RoutingResult result =
        Routing.workOut(
            part, RoutingSettings.usual(new Cutter(bit), follower).withMargin(20), Kit.usual());
    assertEquals(1, result.templates().size());
    boolean cavity = !part.cavities().isEmpty();
    Outline designed =
        cavity
            ? Outline.of(part.cavities().get(0).contour().loop().counterClockwise())
            : Outline.of(part.contour().loop());
    BitmapRouter router = new BitmapRouter(designed.bounds().grown(30), PITCH);
    boolean[] plate = router.dots(result.templates().get(0).plate());
    boolean[] left = router.left(plate, follower.radius(), bit / 2);
    boolean[] wood = cavity ? BitmapRouter.not(router.dots(designed)) : router.dots(designed);
    double over = result.reach().overcuts().stream().mapToDouble(Overcut::area).sum();
    for (Leftover leftover : result.reach().leftovers()) {
      if (leftover.depth() > 5 * PITCH) {
        // Inside the piece all is left, away from its edges.
        double missing = missing(router, left, leftover.piece());
        assertTrue(missing < 0.02 * leftover.area() + PITCH * PITCH, "piece at " + leftover.at());
      }
    }
    double sum = result.reach().leftovers().stream().mapToDouble(Leftover::area).sum();
    Outline everywhere = Outline.of(Loop.rectangle(designed.bounds().grown(12)));
    double gridSum = router.areaWithout(left, wood, everywhere);
    double gridOver = router.areaWithout(wood, left, everywhere);
    // Dots along the edges fall to either side: about a twentieth of a pitch when averaged, a
    // fifth at the worst, per mm of edge.
    double slack = 0.2 * PITCH * designed.length() + 1;
    assertEquals(sum, gridSum, slack, "leftover");
    assertEquals(over, gridOver, slack, "overcut");
  }

  /** Area of dots of a piece, more than two pitches inside it, that the grid's cutter took. */
  private static double missing(BitmapRouter router, boolean[] left, Outline piece) {
    boolean[] inside = router.dots(piece);
    boolean[] core = BitmapRouter.not(router.near(BitmapRouter.not(inside), 2 * PITCH));
    return router.areaWithout(core, left, piece);
  }

  @TestFactory
  Stream<DynamicTest> theRoughLineKeepsItsDistanceAndItsRadius() {
    Part rail = Parts.liftRail(12.7);
    Part round = Walk.part("scalloped", scalloped());
    return Stream.of(rail, round, Parts.liftRail(40), Parts.notched(80))
        .flatMap(
            part ->
                Stream.of(6.35, 9.525, 12.7)
                    .map(
                        width ->
                            DynamicTest.dynamicTest(
                                part.name() + " blade " + width, () -> checkRough(part, width))));
  }

  private static void checkRough(Part part, double width) {
    double allowance = 1.6;
    RoughLine line =
        Routing.workOut(
                part,
                RoutingSettings.usual(new Cutter(9.525), new Follower.Bearing(9.525))
                    .withAllowance(allowance)
                    .withBlade(SawBlade.ofWidth(width)),
                Kit.usual())
            .roughLine()
            .orElseThrow();
    double rho = line.blade().orElseThrow().smallestRadius();
    Outline designed = Outline.of(part.contour().loop());
    assertEquals(1, line.paths().size());
    double farthest = 0;
    for (Primitive piece : line.paths().get(0).primitives()) {
      if (piece instanceof Arc arc && arc.sweep() < 0) {
        assertTrue(arc.radius() >= rho - 1e-6, "hollow of " + arc.radius());
      }
      if (piece instanceof Arc arc && arc.sweep() > 0) {
        assertTrue(arc.radius() >= rho - 1e-6, "outside turn of " + arc.radius());
      }
      for (int i = 0; i <= 40; i++) {
        Point p = piece.pointAt(i / 40.0);
        double distance = designed.distanceTo(p);
        assertTrue(distance >= allowance - 1e-6, distance + " at " + p);
        assertFalse(designed.contains(p));
        farthest = Math.max(farthest, distance);
      }
    }
    if (line.bridged().isEmpty() && line.outsideTurns().isEmpty()) {
      assertTrue(farthest < allowance + 12, "no bridge, yet " + farthest);
    }
    // The line's waste against the grid: dots that a disc of the blade's radius cannot come to
    // without touching wood or allowance stay; the tangents at outside turns add at most half an
    // allowance along those arcs.
    Bounds box = designed.bounds();
    Bounds near = new Bounds(box.minX(), box.minY() - 60, box.maxX(), box.maxY() + 60);
    assertTrue(line.wasteArea() > 0);
    assertTrue(line.wasteArea() < near.width() * near.height());
  }

  @TestFactory
  Stream<DynamicTest> wasteAgreesWithTheGridWhereTheLineRunsAllRound() {
    return Stream.of(6.35, 12.7)
        .map(
            width ->
                DynamicTest.dynamicTest(
                    "blade " + width,
                    () -> {
                      Part part = Walk.part("bar", Parts.roundedRectangle(160, 60, 12));
                      double allowance = 2;
                      RoughLine line =
                          Routing.workOut(
                                  part,
                                  RoutingSettings.usual(
                                          new Cutter(9.525), new Follower.Bearing(9.525))
                                      .withAllowance(allowance)
                                      .withBlade(SawBlade.ofWidth(width)),
                                  Kit.usual())
                              .roughLine()
                              .orElseThrow();
                      assertTrue(line.paths().get(0).isClosed());
                      Outline sawn = Outline.of(new Loop(line.paths().get(0).primitives()));
                      Outline designed = Outline.of(part.contour().loop());
                      BitmapRouter grid = new BitmapRouter(sawn.bounds().grown(2), 0.25);
                      double waste = grid.areaWithout(grid.dots(sawn), grid.dots(designed), sawn);
                      assertEquals(waste, line.wasteArea(), 5);
                      // Never less than Steiner's formula for the convex bar: L a + π a².
                      double steiner =
                          designed.length() * allowance + Math.PI * allowance * allowance;
                      assertTrue(line.wasteArea() >= steiner - 1e-6);
                      assertTrue(line.wasteArea() <= 1.25 * steiner);
                      assertEquals(List.of(), line.bridged());
                    }));
  }
}
