package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grooves against closed formulas. */
class GrooveTest {

  /** The common stack: 1-7/8 in with a 1-1/8 in bearing cuts 3/8 in deep. */
  private static final SlotCutter TOOL = tool(1.875 * 25.4, 1.125 * 25.4);

  private static final double R = TOOL.bearing().radius();
  private static final double CUT = TOOL.cutter().radius();
  private static final double DEPTH = 0.375 * 25.4;

  private static SlotCutter tool(double cutter, double bearing) {
    return new SlotCutter(new Cutter(cutter), new Follower.Bearing(bearing), 6.35);
  }

  private static Groove through(Part part) {
    return Groove.along(part, TOOL, GrooveExtent.through(), Units.MM);
  }

  private static Groove inOpening(Part part) {
    return Groove.along(part, TOOL, GrooveExtent.through().alongEdge("opening"), Units.MM);
  }

  private static Problem refused(Part part, SlotCutter tool, GrooveExtent extent) {
    return assertThrows(Problem.class, () -> Groove.along(part, tool, extent, Units.MM));
  }

  // (cutter − bearing) / 2: how-to article, 2 in on 1 in cuts 1/2 in; the stacks of 1-7/8 in from
  // memory of common practice; 22 mm bearing under 50 and 52 mm cutters 14 and 15 mm deep.
  @ParameterizedTest
  @CsvSource({
    "2in, 1in, 1/2in",
    "1-7/8in, 7/8in, 1/2in",
    "1-7/8in, 1-1/8in, 3/8in",
    "1-7/8in, 1-3/8in, 1/4in",
    "50mm, 22mm, 14mm",
    "52mm, 22mm, 15mm"
  })
  void depthOfPublishedPairs(String cutter, String bearing, String depth) {
    SlotCutter tool = tool(Length.parse(cutter), Length.parse(bearing));
    assertEquals(Length.parse(depth), tool.depth(), 1e-9);
    Groove groove = Groove.along(Parts.liftRail(60), tool, GrooveExtent.through(), Units.MM);
    assertEquals(Length.parse(depth), groove.leastDepth(), 1e-9);
  }

  /** Every arc of the edge keeps its centre; hollow ones gain the depth, round ones lose it. */
  @Test
  void floorOfAReverseCurveIsConcentric() {
    GrooveRun run = through(Parts.liftRail(60)).runs().get(0);
    assertEquals(run.edge().primitives().size(), run.floor().primitives().size());
    for (int i = 0; i < run.edge().primitives().size(); i++) {
      Primitive edge = run.edge().primitives().get(i);
      Primitive floor = run.floor().primitives().get(i);
      if (edge instanceof Arc arc) {
        double radius = arc.sweep() > 0 ? 60 - DEPTH : 60 + DEPTH;
        assertEquals(radius, ((Arc) floor).radius(), 1e-9);
        assertEquals(0, arc.center().distanceTo(((Arc) floor).center()), 1e-9);
      } else {
        assertEquals(DEPTH, edge.distanceTo(floor.middle()), 1e-9);
      }
    }
    assertEquals(0, run.floor().start().distanceTo(new Point(0, DEPTH)), 1e-9);
    assertEquals(0, run.floor().end().distanceTo(new Point(600, DEPTH)), 1e-9);
  }

  @Test
  void roundedOpeningGrowsByTheDepth() {
    Groove groove = inOpening(Parts.boardWith(Parts.roundedRectangle(140, 90, 20)));
    assertTrue(groove.shallow().isEmpty());
    double grown = Math.abs(new Loop(groove.runs().get(0).floor().primitives()).signedArea());
    double width = 140 + 2 * DEPTH;
    double height = 90 + 2 * DEPTH;
    double radius = 20 + DEPTH;
    assertEquals(width * height - (4 - Math.PI) * radius * radius, grown, 1e-6);
  }

  /** A sharp hollow of angle θ keeps r − R/sin(θ/2) and loses R (1/sin(θ/2) − 1). */
  @ParameterizedTest
  @CsvSource({"90", "120", "150"})
  void sharpHollow(double angle) {
    Groove groove = through(Parts.notched(angle));
    double sine = Math.sin(Math.toRadians(angle / 2));
    assertEquals(1, groove.shallow().size());
    Groove.Shallow place = groove.shallow().get(0);
    assertEquals(R * (1 / sine - 1), place.lostDepth(), 1e-6);
    assertEquals(CUT - R / sine, place.depthLeft(), 1e-6);
    assertEquals(place.depthLeft(), groove.leastDepth(), 1e-12);
    assertEquals(DEPTH, groove.depthWanted(), 1e-12);
    assertEquals(0, place.insideRadius(), 1e-6);
    assertEquals(0, place.at().distanceTo(new Point(0, 140)), 1e-3);
  }

  /** A hollow quarter circle of radius ρ under the bearing loses (R − ρ)(√2 − 1). */
  @ParameterizedTest
  @CsvSource({"5", "8", "12"})
  void tightQuarterCircles(double radius) {
    Groove groove = inOpening(Parts.boardWith(Parts.roundedRectangle(140, 90, radius)));
    assertEquals(4, groove.shallow().size());
    for (int i = 0; i < 4; i++) {
      Groove.Shallow place = groove.shallow().get(i);
      assertEquals(i + 1, place.number());
      assertEquals((R - radius) * (Math.sqrt(2) - 1), place.lostDepth(), 1e-6);
      assertEquals(DEPTH - place.lostDepth(), place.depthLeft(), 1e-6);
      assertEquals(radius, place.insideRadius(), 1e-6);
    }
  }

  /** The bearing that just follows: the floor is the cutter's own circle and nothing is lost. */
  @Test
  void bearingAsTightAsTheHollow() {
    Groove groove = inOpening(Parts.boardWith(Parts.roundedRectangle(140, 90, R)));
    assertEquals(DEPTH, groove.leastDepth(), 1e-6);
    assertTrue(groove.shallow().isEmpty());
  }

  /** r < R/sin(θ/2): at the bottom of the notch the cutter does not reach the edge at all. */
  @Test
  void bearingThatCannotFollowAtAllIsRefused() {
    SlotCutter wide = tool(34, 28);
    Problem problem = refused(Parts.notched(90), wide, GrooveExtent.through());
    assertTrue(problem.getMessage().contains("sharp inside corner"), problem.getMessage());
    assertTrue(problem.getMessage().contains("breaks off"), problem.getMessage());
    Part tight = Parts.boardWith(Parts.roundedRectangle(140, 90, 5));
    Problem other = refused(tight, wide, GrooveExtent.through().alongEdge("opening"));
    assertTrue(other.getMessage().contains("no wider than 10 mm"), other.getMessage());
  }

  /** Along a straight the round end is √(r² − R²) long, and the floor starts at the stop. */
  @Test
  void stoppedGroove() {
    Groove groove =
        Groove.along(Parts.liftRail(60), TOOL, GrooveExtent.through().stopped(50, 70), Units.MM);
    GrooveRun run = groove.runs().get(0);
    double tail = Math.sqrt(CUT * CUT - R * R);
    assertTrue(run.isStopped());
    assertEquals(tail, run.startTail(), 1e-9);
    assertEquals(tail, run.endTail(), 1e-9);
    assertEquals(0, run.floor().start().distanceTo(new Point(50 - tail, 0)), 1e-9);
    assertEquals(0, run.floor().end().distanceTo(new Point(530 + tail, 0)), 1e-9);
    assertEquals(0, run.cutterCentre().start().distanceTo(new Point(50, -R)), 1e-9);
    assertEquals(0, run.cutterCentre().end().distanceTo(new Point(530, -R)), 1e-9);
    Arc first = (Arc) run.floor().primitives().get(0);
    assertEquals(CUT, first.radius(), 1e-9);
    assertEquals(0, first.end().distanceTo(new Point(50, DEPTH)), 1e-9);
    for (int i = 1; i < run.floor().primitives().size(); i++) {
      assertEquals(
          run.floor().primitives().get(i - 1).end(), run.floor().primitives().get(i).start());
    }
  }

  @Test
  void stoppedAtOneEndOnly() {
    GrooveExtent extent = GrooveExtent.through().stoppedAtEnd(80);
    GrooveRun run = Groove.along(Parts.liftRail(60), TOOL, extent, Units.MM).runs().get(0);
    assertEquals(0, run.startTail());
    assertEquals(0, run.floor().start().distanceTo(new Point(0, DEPTH)), 1e-9);
    assertTrue(run.endTail() > 0);
  }

  /** Stopped 10 mm before the end, but the round end needs 19.05. */
  @Test
  void aStopTooNearToTheEndIsTold() {
    GrooveExtent extent = GrooveExtent.through().stoppedAtStart(10);
    Groove groove = Groove.along(Parts.liftRail(60), TOOL, extent, Units.MM);
    assertEquals(1, groove.cautions().size());
    assertTrue(groove.cautions().get(0).contains("comes out at the start"));
    Path floor = groove.runs().get(0).floor();
    assertEquals(0, floor.start().x(), 1e-9);
    // The cutter's circle about (10, −R) at x = 0.
    assertEquals(Math.sqrt(CUT * CUT - 100) - R, floor.start().y(), 1e-9);
  }

  @Test
  void stopsThatMeetAreRefused() {
    Problem problem = refused(Parts.liftRail(60), TOOL, GrooveExtent.through().stopped(400, 300));
    assertTrue(problem.getMessage().contains("nearer to the ends"), problem.getMessage());
  }

  /** A taper thinner than the groove is deep at one end: stopped before it, it can be grooved. */
  @Test
  void aStopSparesTheThinEnd() {
    Part taper = Walk.from(0, 0, 0).to(300, 0).sawn().to(300, 60).to(0, 5).to(0, 0).part("taper");
    assertTrue(refused(taper, TOOL, GrooveExtent.through()).getMessage().contains("through"));
    GrooveExtent stopped = GrooveExtent.through().stoppedAtStart(120);
    GrooveRun run = Groove.along(taper, TOOL, stopped, Units.MM).runs().get(0);
    assertEquals(Math.sqrt(CUT * CUT - R * R), run.startTail(), 1e-9);
    assertEquals(DEPTH, run.floor().end().y(), 1e-9);
  }

  /** A curve that flows into a sawn straight: the groove would end inside the wood. */
  @Test
  void anEdgeThatFlowsIntoASawnOneIsRefusedUnlessStopped() {
    Part part =
        Walk.from(0, 0, 0)
            .ahead(100)
            .arc(200, -30)
            .arc(200, 30)
            .sawn()
            .ahead(200)
            .turn(90)
            .ahead(120)
            .to(0, 66)
            .part("flowing");
    Problem problem = refused(part, TOOL, GrooveExtent.through());
    assertTrue(problem.getMessage().contains("goes on into a sawn one"), problem.getMessage());
    GrooveExtent stopped = GrooveExtent.through().stoppedAtEnd(30);
    assertTrue(Groove.along(part, TOOL, stopped, Units.MM).runs().get(0).endTail() > 0);
  }

  /** In an outside corner the floor has no depth square to the edge. */
  @Test
  void aStopInASharpCornerIsRefused() {
    Part peak =
        Walk.from(0, 60, 0).to(150, 0).to(300, 60).sawn().to(300, 160).to(0, 160).part("peak");
    double corner = Math.hypot(150, 60);
    Problem problem = refused(peak, TOOL, GrooveExtent.through().stoppedAtStart(corner));
    assertTrue(problem.getMessage().contains("stop in the corner"), problem.getMessage());
    GrooveExtent after = GrooveExtent.through().stoppedAtStart(corner + DEPTH);
    assertEquals(DEPTH, Groove.along(peak, TOOL, after, Units.MM).leastDepth(), 1e-9);
  }

  @Test
  void anEdgeAllRoundHasNoEnds() {
    Part round = Walk.part("round", Parts.roundedRectangle(140, 90, 20));
    Problem problem = refused(round, TOOL, GrooveExtent.through().stopped(10, 10));
    assertTrue(problem.getMessage().contains("all round"), problem.getMessage());
    assertTrue(through(round).runs().get(0).floor().isClosed());
  }

  /** Two shaped edges, 90 mm apart: only the one asked for is grooved. */
  @Test
  void oneSideOfTwo() {
    Part both =
        Walk.from(0, 0, 0)
            .ahead(300)
            .sawn()
            .turn(90)
            .ahead(90)
            .routed()
            .turn(90)
            .ahead(300)
            .sawn()
            .to(0, 0)
            .part("both");
    assertEquals(2, through(both).runs().size());
    GrooveExtent upper = GrooveExtent.through().on(BoardSide.TOP);
    Groove groove = Groove.along(both, TOOL, upper, Units.MM);
    assertEquals(1, groove.runs().size());
    assertEquals(90 - DEPTH, groove.runs().get(0).floor().start().y(), 1e-9);
    Part bulging = Walk.from(0, 0, 0).ahead(300).sawn().to(320, 45).to(300, 90).to(0, 0).part("b");
    Problem problem = refused(bulging, TOOL, GrooveExtent.through().on(BoardSide.RIGHT));
    assertTrue(problem.getMessage().contains("no straight edge"), problem.getMessage());
    assertTrue(problem.getMessage().endsWith("along: bottom"), problem.getMessage());
  }

  /**
   * Of a board routed all round, one straight side is grooved from end to end like a jointed one.
   */
  @Test
  void oneSideOfABoardRoutedAllRound() {
    Part board = Walk.from(0, 0, 0).to(300, 0).to(300, 200).to(0, 200).to(0, 0).part("b");
    GrooveExtent bottom = GrooveExtent.through().on(BoardSide.BOTTOM);
    Path floor = Groove.along(board, TOOL, bottom, Units.MM).runs().get(0).floor();
    assertEquals(0, floor.start().distanceTo(new Point(0, DEPTH)), 1e-9);
    assertEquals(0, floor.end().distanceTo(new Point(300, DEPTH)), 1e-9);
  }

  /** A straight sawn edge, jointed true, carries the bearing where its side is named. */
  @Test
  void aJointedEdge() {
    Part board = Walk.part("board", Parts.board(300, 200));
    Groove groove = Groove.along(board, TOOL, GrooveExtent.through().on(BoardSide.TOP), Units.MM);
    Path floor = groove.runs().get(0).floor();
    assertEquals(0, floor.start().distanceTo(new Point(150, 100 - DEPTH)), 1e-9);
    assertEquals(0, floor.end().distanceTo(new Point(-150, 100 - DEPTH)), 1e-9);
    Groove stopped =
        Groove.along(
            board, TOOL, GrooveExtent.through().on(BoardSide.LEFT).stopped(50, 60), Units.MM);
    // Along a straight edge the tail is √(r² − R²) long.
    double tail =
        Math.sqrt(Math.pow(TOOL.cutter().radius(), 2) - Math.pow(TOOL.bearing().radius(), 2));
    assertEquals(tail, stopped.runs().get(0).startTail(), 1e-6);
    assertEquals(100 - 50 + tail, stopped.runs().get(0).floor().start().y(), 1e-6);
    assertEquals(-100 + 60 - tail, stopped.runs().get(0).floor().end().y(), 1e-6);
  }

  @Test
  void aTemplateThatStandsBackDeepensTheGroove() {
    Part rail = Parts.liftRail(60);
    GrooveExtent extent = GrooveExtent.through();
    assertEquals(DEPTH + 2, Groove.along(rail, TOOL, extent, -2, Units.MM).leastDepth(), 1e-9);
    Groove shallower = Groove.along(rail, TOOL, extent, 2, Units.MM);
    assertEquals(DEPTH - 2, shallower.runs().get(0).floor().start().y(), 1e-9);
    Problem problem =
        assertThrows(Problem.class, () -> Groove.along(rail, TOOL, extent, 12, Units.MM));
    assertTrue(problem.getMessage().contains("no groove is cut"), problem.getMessage());
  }

  @Test
  void whatCannotBeGrooved() {
    Part thin =
        Walk.from(0, 0, 0)
            .ahead(300)
            .sawn()
            .turn(90)
            .ahead(9)
            .turn(90)
            .ahead(300)
            .to(0, 0)
            .part("thin");
    assertTrue(refused(thin, TOOL, GrooveExtent.through()).getMessage().contains("through"));
    Part board = Walk.part("board", Parts.board(300, 200));
    assertTrue(refused(board, TOOL, GrooveExtent.through()).getMessage().contains("sawn"));
    GrooveExtent typo = GrooveExtent.through().alongEdge("opning");
    Part holed = Parts.boardWith(Parts.roundedRectangle(140, 90, 20));
    assertTrue(refused(holed, TOOL, typo).getMessage().contains("did you mean opening?"));
    Contour small = Parts.roundedRectangle(40, 40, 18);
    Problem problem =
        refused(Parts.boardWith(small), TOOL, GrooveExtent.through().alongEdge("opening"));
    assertTrue(problem.getMessage().contains("does not go into"), problem.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"30, 30", "30, 31"})
  void aBearingAsWideAsItsCutterIsRefused(double cutter, double bearing) {
    Problem problem = assertThrows(Problem.class, () -> tool(cutter, bearing));
    assertTrue(problem.getMessage().contains("cuts no groove"), problem.getMessage());
  }
}
