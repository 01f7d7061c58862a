package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.wood.Cut;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels against closed formulas and cases worked by hand. */
class PanelTest {

  private static final double DEPTH = 0.375 * Frames.INCH;
  private static final double START = Frames.INCH / 32;
  private static final double ALONG = Frames.INCH / 16;

  private static Panel fit(FrameOpening opening, PanelSettings settings) {
    return Panel.fit("panel", opening, settings);
  }

  private static Problem refused(FrameOpening opening, PanelSettings settings) {
    return assertThrows(Problem.class, () -> fit(opening, settings));
  }

  /** A sheet stays 1/32 in off every floor: opening + 2 (depth − gap). */
  @Test
  void plywoodInAPlainFrame() {
    Panel panel = fit(Frames.plain(400, 500), Frames.plywood());
    assertEquals(400 + 2 * (DEPTH - Frames.INCH / 32), panel.width(), 1e-9);
    assertEquals(500 + 2 * (DEPTH - Frames.INCH / 32), panel.height(), 1e-9);
    for (PanelSeat seat : panel.seats()) {
      assertEquals(DEPTH - Frames.INCH / 32, seat.driest().seat(), 1e-9);
      assertEquals(seat.driest(), seat.dampest());
    }
    assertTrue(panel.tongue().isEmpty());
  }

  /**
   * White oak, flat-sawn, 14 in between the stiles, put in at 8 %, later 6 to 12 %. By hand: growth
   * g = 0.00365 · 4 = 0.0146, shrink s = 0.0073. Dampest it fills the floors' 373.65 + ... but for
   * 1/32 in a side, so it is made (355.6 + 19.05 − 1.5875) / 1.0146 = 367.6942 mm wide: seat 6.0471
   * at assembly, less half of 0.0073 · 367.6942 = 1.3421, so 4.7050 when driest, and 8.73125 when
   * dampest.
   */
  @Test
  void solidPanelByHand() {
    Panel panel = fit(Frames.plain(14 * Frames.INCH, 500), Frames.solid("white oak", 8, 6, 12));
    assertEquals(367.6942, panel.width(), 0.0001);
    for (BoardSide side : List.of(BoardSide.LEFT, BoardSide.RIGHT)) {
      PanelSeat seat = panel.seat(side);
      assertEquals(6.0471, seat.assembled().seat(), 0.0001);
      assertEquals(4.7050, seat.driest().seat(), 0.0001);
      assertEquals(DEPTH - START, seat.dampest().seat(), 1e-9);
      assertEquals(START, seat.dampest().gap(), 1e-9);
    }
    // Along the fibres nothing moves.
    assertEquals(500 + 2 * (DEPTH - ALONG), panel.height(), 1e-9);
    assertEquals(DEPTH - ALONG, panel.seat(BoardSide.TOP).driest().seat(), 1e-9);
  }

  /**
   * Shop figure: a flat-sawn cherry panel 12 in wide grows 0.149 in from 6 to 11 %, so each side
   * needs 0.074 in beside the start gap.
   */
  @Test
  void cherryPanelOfTheShopFigure() {
    double opening = 12 * Frames.INCH - 2 * DEPTH + 2 * (START + 0.074 * Frames.INCH);
    Panel panel = fit(Frames.plain(opening, 500), Frames.solid("black cherry", 6, 6, 11));
    assertEquals(12 * Frames.INCH, panel.width(), 0.05);
    assertEquals(
        0.074 * Frames.INCH, panel.seat(BoardSide.LEFT).gap() - START, 0.0015 * Frames.INCH);
  }

  @Test
  void quarterSawnNeedsLess() {
    PanelSettings flat = Frames.solid("white oak", 8, 6, 12);
    FrameOpening opening = Frames.plain(400, 500);
    double quarter = fit(opening, flat.withCut(Cut.QUARTER_SAWN)).seat(BoardSide.LEFT).gap();
    assertTrue(quarter < fit(opening, flat).seat(BoardSide.LEFT).gap());
    assertEquals(
        (400 + 2 * DEPTH - 2 * START) / (1 + 0.00180 * 4),
        fit(opening, flat.withCut(Cut.QUARTER_SAWN)).width(),
        1e-9);
  }

  /** Level fibres: the panel moves between the rails and not between the stiles. */
  @Test
  void levelFibres() {
    Panel panel =
        fit(Frames.plain(600, 300), Frames.solid("white oak", 8, 6, 12).withFibres(Fibres.LEVEL));
    assertEquals(600 + 2 * (DEPTH - ALONG), panel.width(), 1e-9);
    assertEquals((300 + 2 * DEPTH - 2 * START) / 1.0146, panel.height(), 1e-9);
    assertEquals(panel.width(), panel.part().contour().loop().bounds().width(), 1e-9);
  }

  /** The arch keeps its centre: radius + depth − gap, on the frame and on its floor. */
  @Test
  void archesAreConcentric() {
    FrameOpening opening =
        Frames.under(14 * Frames.INCH, 18 * Frames.INCH, Frames.shape("arched-door-rail"));
    // (c² + 4 h²) / (8 h) with c = 12 in, h = 1-3/4 in.
    double radius = (12 * 12 + 4 * 1.75 * 1.75) / (8 * 1.75) * Frames.INCH;
    Point centre = new Point(7 * Frames.INCH, (18 + 1.75) * Frames.INCH - radius);
    Panel panel = fit(opening, Frames.solid("white oak", 9, 7, 12));
    double gap = panel.seat(BoardSide.TOP).gap();
    checkArc(panel.outline().outer().primitives(), radius + DEPTH - gap, centre);
    checkArc(panel.floors().get(BoardSide.TOP.ordinal()).primitives(), radius + DEPTH, centre);
    // Steep ends move towards the floor, so the arch keeps more than the plain gap.
    double sine = 6 * Frames.INCH / radius;
    double half = 6 * Frames.INCH + DEPTH * sine;
    double growth = 0.00365 * 3;
    assertEquals(ALONG + growth * half * sine, gap, 0.05);
    assertTrue(gap > ALONG);
    assertTrue(panel.seat(BoardSide.TOP).dampest().gap() >= ALONG - 0.01);
  }

  private static void checkArc(List<Primitive> pieces, double radius, Point centre) {
    List<Arc> arcs = pieces.stream().filter(Arc.class::isInstance).map(Arc.class::cast).toList();
    assertEquals(1, arcs.size());
    assertEquals(radius, arcs.get(0).radius(), 1e-6);
    assertEquals(0, arcs.get(0).center().distanceTo(centre), 1e-6);
  }

  /** The shape file of the panel works its outline out by formulas of its own. */
  @ParameterizedTest
  @CsvSource({"14in, 1-3/4in, 1in", "14in, 5in, 2in", "20in, 3in, 0in", "9in, 1/4in, 1/2in"})
  void sheetPanelIsThatOfTheShapeFile(String opening, String rise, String flat) {
    Part rail =
        Frames.shape(
            "arched-door-rail", "opening", opening, "rise", rise, "flat", flat, "width", "8in");
    Part shape =
        Frames.shape(
            "arched-door-panel", "opening", opening, "rise", rise, "flat", flat, "gap", "1/32in");
    double width = org.bearingline.length.Length.parse(opening);
    Panel panel = fit(Frames.under(width, 18 * Frames.INCH, rail), Frames.plywood());
    assertEquals(shape.contour().loop().signedArea(), panel.outline().area(), 1e-4);
    for (Primitive piece : panel.part().contour().loop().primitives()) {
      for (double t : new double[] {0, 0.3, 0.5, 0.8}) {
        assertEquals(0, shape.contour().loop().distanceTo(piece.pointAt(t)), 1e-6);
      }
    }
  }

  @Test
  void panelAsAPieceToMake() {
    Part rail = Frames.shape("arched-door-rail");
    FrameOpening opening =
        FrameOpening.of(
            14 * Frames.INCH, 18 * Frames.INCH, Optional.of(rail), Optional.of(rail), Units.MM);
    Part part = fit(opening, Frames.solid("white oak", 9, 7, 12)).part();
    List<EdgeKind> kinds = part.contour().kinds();
    int straight = 0;
    for (int i = 0; i < kinds.size(); i++) {
      Primitive piece = part.contour().loop().primitives().get(i);
      boolean alongX = Math.abs(piece.tangentAt(0).y()) < 1e-9 && piece.curvature() == 0;
      assertEquals(alongX ? EdgeKind.SAWN : EdgeKind.ROUTED, kinds.get(i));
      straight += alongX ? 1 : 0;
    }
    assertEquals(2, straight);
    // Face view laid down: the foot on the left, the centre line along the drawing.
    Mark.CentreLine centre = (Mark.CentreLine) part.marks().get(0);
    assertEquals(centre.from().y(), centre.to().y(), 1e-9);
    assertEquals(part.contour().loop().bounds().center().y(), centre.from().y(), 1e-6);
    assertEquals(0, part.contour().loop().bounds().minX(), 1e-9);
    assertEquals(4, part.marks().stream().filter(Mark.ShoulderLine.class::isInstance).count());
    RoutingResult result =
        Routing.workOut(
            part, RoutingSettings.usual(new Cutter(12.7), new Follower.Bearing(12.7)), Kit.usual());
    assertEquals(1, result.templates().size());
    assertTrue(result.proof().orElseThrow().maxDeviation() < 1e-6);
    assertTrue(result.roughLine().isPresent());
  }

  /** The marks show where the frame's edges fall: a seat's width in from the panel's edge. */
  @Test
  void witnessMarksFallOnTheFrame() {
    Panel panel = fit(Frames.plain(400, 500), Frames.plywood());
    for (Mark mark : panel.part().marks()) {
      if (mark instanceof Mark.ShoulderLine line) {
        Point middle = line.from().towards(line.to(), 0.5);
        double in = panel.part().contour().loop().distanceTo(middle);
        assertEquals(panel.seat(BoardSide.LEFT).assembled().seat(), in, 1e-9);
      }
    }
  }

  /** 19.05 thick in a 6.35 slot: 6.25 left, 12.8 off, wide enough for the dampest day. */
  @Test
  void tongue() {
    Panel panel = fit(Frames.plain(355.6, 500), Frames.solid("white oak", 8, 6, 12));
    Tongue tongue = panel.tongue().orElseThrow();
    assertEquals(6.25, tongue.thickness(), 1e-9);
    assertEquals(12.8, tongue.waste(), 1e-9);
    assertEquals(DEPTH - START + START, tongue.width(), 1e-9);
    assertEquals(START, tongue.shoulderDampest(), 1e-9);
    assertEquals(
        tongue.width() - panel.seat(BoardSide.LEFT).driest().seat(), tongue.shoulderDriest(), 1e-9);
    assertTrue(panel.part().notes().stream().anyMatch(note -> note.contains("6.25 mm")));
  }

  @Test
  void aThinPanelRattles() {
    PanelSettings thin =
        PanelSettings.usual(
            Frames.SLOT, Frames.plywood().species(), 5, 9, Frames.plywood().range(), Units.MM);
    Panel panel = fit(Frames.plain(400, 500), thin);
    assertEquals(1, panel.cautions().size());
    assertTrue(panel.cautions().get(0).contains("rattle"));
    assertTrue(fit(Frames.plain(400, 500), Frames.plywood()).cautions().isEmpty());
  }

  /** 900 mm of flat-sawn oak moves more than a 3/8 in groove holds. */
  @Test
  void aWidePanelFallsOut() {
    Problem problem = refused(Frames.plain(900, 500), Frames.solid("white oak", 9, 6, 12));
    assertTrue(problem.getMessage().contains("driest"), problem.getMessage());
    assertTrue(problem.getMessage().contains("quarter-sawn"), problem.getMessage());
    // What the sentence asks for is enough.
    double asked =
        Double.parseDouble(problem.getMessage().replaceAll(".*at least ([0-9.]+) mm deep.*", "$1"));
    PanelSettings deeper =
        PanelSettings.usual(
            Frames.slot(28.575 + 2 * asked, 28.575),
            Frames.solid("white oak", 9, 6, 12).species(),
            19.05,
            9,
            Frames.solid("white oak", 9, 6, 12).range(),
            Units.MM);
    Panel panel = fit(Frames.plain(900, 500), deeper);
    assertTrue(panel.seat(BoardSide.LEFT).driest().seat() >= Frames.INCH / 8 - 1e-6);
    assertTrue(panel.seat(BoardSide.LEFT).driest().seat() < Frames.INCH / 8 + 0.5);
  }

  @Test
  void aPanelThatCannotMove() {
    PanelSettings oak = Frames.solid("white oak", 8, 6, 12);
    Problem problem = refused(Frames.plain(400, 500), oak.withAcrossGap(0));
    assertTrue(problem.getMessage().contains("cannot move"), problem.getMessage());
    // A panel that never gets damper than now, set tight, cannot move either.
    assertTrue(
        refused(Frames.plain(400, 500), Frames.solid("white oak", 8, 6, 8).withStartGap(0))
            .getMessage()
            .contains("cannot move"));
  }

  /** 400 mm of oak gains half of 0.0146 · 417 = 3 mm a side; 1 mm is not enough. */
  @Test
  void aPanelThatBurstsItsFrame() {
    PanelSettings oak = Frames.solid("white oak", 8, 6, 12);
    Problem problem = refused(Frames.plain(400, 500), oak.withAcrossGap(1));
    assertTrue(problem.getMessage().contains("push the frame apart"), problem.getMessage());
    double asked =
        Double.parseDouble(
            problem.getMessage().replaceAll(".*gap of at least ([0-9.]+) mm.*", "$1"));
    Panel panel = fit(Frames.plain(400, 500), oak.withAcrossGap(asked));
    assertTrue(panel.seat(BoardSide.LEFT).dampest().gap() > 0);
  }

  @Test
  void aGapDeeperThanTheGroove() {
    Problem problem =
        refused(Frames.plain(400, 500), Frames.solid("white oak", 8, 6, 12).withAcrossGap(12));
    assertTrue(problem.getMessage().contains("nothing of it would be held"));
  }

  /** A rail with a sharp hollow: the bearing bridges it, and there the panel sits less deep. */
  @Test
  void aHollowTheBearingCannotFollowIsTold() {
    double half = 60 * Math.tan(Math.toRadians(75));
    Part rail =
        Walk.from(0, 0, 0)
            .to(300 - half, 0)
            .to(300, 60)
            .to(300 + half, 0)
            .to(600, 0)
            .sawn()
            .to(600, 150)
            .to(0, 150)
            .part("peaked");
    Panel panel = fit(Frames.under(600, 400, rail), Frames.plywood().withLeastSeat(2));
    PanelSeat top = panel.seat(BoardSide.TOP);
    double lost = Frames.SLOT.bearing().radius() * (1 / Math.sin(Math.toRadians(75)) - 1);
    assertEquals(DEPTH - top.gap() - lost, top.assembled().seat(), 1e-3);
    assertEquals(1, panel.cautions().size());
    assertTrue(panel.cautions().get(0).contains("cannot follow"));
  }
}
