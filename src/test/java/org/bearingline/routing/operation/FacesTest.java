package org.bearingline.routing.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FacesTest {

  private static final FaceWishes PAIR =
      new FaceWishes(Optional.of(FaceWishes.Pair.LEFT_RIGHT), Optional.empty());

  private static FaceWishes register(FaceWishes.Register how) {
    return new FaceWishes(Optional.empty(), Optional.of(how));
  }

  private static Recess onB(String name, double x, double y) {
    return Benches.recess(
        name, Face.B, Benches.flush(12.7), Benches.box(name, x, y, 60, 30, 10), 6);
  }

  private static OperationPlan wedge(FaceWishes wishes) {
    Part part = Benches.wedge();
    return Benches.plan(
        part, wishes, Benches.edge("edge", part, Benches.flush(12.7)), onB("pull", 120, 60));
  }

  @Test
  void aWedgeIsLeftHandedWhenTheTemplateIsTurnedOver() {
    OperationPlan plan = wedge(FaceWishes.NONE);
    assertFalse(plan.faces().symmetrical());
    assertTrue(
        plan.faces().sentences().stream().anyMatch(one -> one.contains("left-handed")),
        () -> plan.faces().sentences().toString());
    assertFalse(plan.templates().get(0).eitherSideUp());
    assertEquals(
        List.of(new FacePlan.Lie("", Face.A, Face.A), new FacePlan.Lie("", Face.B, Face.B)),
        plan.faces().lies());
  }

  @Test
  void aPairFromOneTemplateSaysWhichSideUpGivesWhichHand() {
    OperationPlan plan = wedge(PAIR);
    assertEquals(
        List.of(
            new FacePlan.Lie("left", Face.A, Face.A),
            new FacePlan.Lie("left", Face.B, Face.B),
            new FacePlan.Lie("right", Face.A, Face.B),
            new FacePlan.Lie("right", Face.B, Face.A)),
        plan.faces().lies());
    assertTrue(
        plan.faces().sentences().stream()
            .anyMatch(one -> one.contains("with side B up on face A comes the right piece")));
    assertTrue(plan.faces().sentences().stream().noneMatch(one -> one.contains("left-handed")));
  }

  @Test
  void aSymmetricalPairIsOnePiece() {
    Part part = Benches.routedBoard(300, 200);
    OperationPlan plan = Benches.plan(part, PAIR, Benches.edge("edge", part, Benches.flush(12.7)));
    assertTrue(plan.faces().symmetrical());
    assertTrue(plan.templates().get(0).eitherSideUp());
    assertTrue(plan.faces().sentences().get(0).contains("are the same"));
    assertEquals(1, plan.faces().lies().size());
  }

  /** An operation off the centre line takes the symmetry away; one tenth of a millimetre does. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 25})
  void operationsCountForSymmetry(double off) {
    Part part = Benches.routedBoard(300, 200);
    OperationPlan plan =
        Benches.plan(
            part,
            Benches.edge("edge", part, Benches.flush(12.7)),
            Benches.recess(
                "pull",
                Benches.flush(12.7),
                Benches.box("pull", 150 + off, 100 + off, 60, 30, 10)));
    assertEquals(off == 0, plan.faces().symmetrical());
  }

  /** Equal bulges on both sides, then one bulge a little flatter over the same ends. */
  @Test
  void arcsAreComparedAsArcs() {
    assertTrue(lens(0.4, 0.4).faces().symmetrical());
    OperationPlan flatter = lens(0.4, 0.399);
    assertTrue(flatter.faces().symmetrical(), "about the upright line it is its own image");
    assertEquals(flatter.faces().axis().from().x(), flatter.faces().axis().to().x(), 1e-9);
    assertFalse(lensWithFlat(0.4, 0.399).faces().symmetrical());
  }

  private static OperationPlan lens(double lower, double upper) {
    Point a = new Point(0, 0);
    Point b = new Point(300, 0);
    return planned(Loop.of(Arc.ofBulge(a, b, lower), Arc.ofBulge(b, a, upper)));
  }

  /** The two halves of the upper side bulge differently. */
  private static OperationPlan lensWithFlat(double right, double left) {
    Point a = new Point(0, 0);
    Point b = new Point(300, 0);
    Point top = new Point(150, 80);
    return planned(Loop.of(new Line(a, b), Arc.ofBulge(b, top, right), Arc.ofBulge(top, a, left)));
  }

  private static OperationPlan planned(Loop loop) {
    Part part = Benches.part(Contour.routed(loop));
    return Benches.plan(part, Benches.edge("edge", part, Benches.flush(12.7)));
  }

  @Test
  void marksForDrillingGiveATemplateItsSide() {
    Part part = Benches.routedBoard(300, 200);
    for (double x : new double[] {150, 160}) {
      Drilling drilling =
          new Drilling(
              Head.of("knob", Face.A),
              List.of(new Hole(new Point(x, 90), 6, OptionalDouble.empty(), "knob")));
      OperationPlan plan =
          Benches.plan(part, Benches.edge("edge", part, Benches.flush(12.7)), drilling);
      assertEquals(1, plan.templates().get(0).guides().size());
      assertEquals(x == 150, plan.templates().get(0).eitherSideUp());
    }
  }

  @Test
  void faceBIsSeenMirroredInTheCentreLine() {
    OperationPlan plan = wedge(FaceWishes.NONE);
    double middle = plan.faces().axis().from().x();
    assertEquals(
        new Point(2 * middle - 120, 60), plan.faces().seenFromB().apply(new Point(120, 60)));
  }

  @Test
  void aTemplateForFaceBAloneIsPrintedMirrored() {
    OperationPlan plan = Benches.plan(Benches.board(300, 200), onB("pull", 100, 100));
    assertTrue(plan.templates().get(0).mirroredPrint());
  }

  @Test
  void pinsStandInTheWasteBehindSawnEdgesAndInEveryPlate() {
    OperationPlan plan = wedge(register(FaceWishes.Register.PINS));
    Registration.Pins pins = assertInstanceOf(Registration.Pins.class, plan.faces().registration());
    Loop work = Benches.wedge().contour().loop();
    Outline plate = plan.templates().get(0).template().plate();
    for (Point pin : pins.centres()) {
      assertFalse(work.contains(pin));
      assertEquals(20, work.distanceTo(pin), 1e-6);
      assertTrue(plate.contains(pin));
      assertTrue(plate.distanceTo(pin) >= pins.diameter() / 2 + 10);
    }
    Point first = pins.centres().get(0);
    Point second = pins.centres().get(1);
    assertTrue(first.distanceTo(second) > 400);
    Point image = plan.faces().seenFromB().apply(first);
    assertTrue(image.distanceTo(second) > 1, "so that the plate fits one side up only");
    assertTrue(pins.sentences().get(0).startsWith("Leave the work"));
  }

  @Test
  void thePartsOwnHolesCarryPins() {
    Part plain = Benches.routedBoard(300, 200);
    Part drilled =
        new Part(
            "rack",
            "a rack",
            plain.contour(),
            List.of(),
            List.of(
                new Mark.DrillCentre(new Point(40, 100), 12, "peg"),
                new Mark.DrillCentre(new Point(150, 100), 12, "peg"),
                new Mark.DrillCentre(new Point(260, 100), 12, "peg")),
            List.of());
    OperationPlan plan = Benches.plan(drilled, Benches.edge("edge", drilled, Benches.flush(12.7)));
    Registration.Pins pins = assertInstanceOf(Registration.Pins.class, plan.faces().registration());
    assertEquals(List.of(new Point(40, 100), new Point(260, 100)), pins.centres());
    assertEquals(12, pins.diameter());
  }

  @Test
  void sawnEdgesTakeStopsAndRoutedPartsCentreLines() {
    Registration.Stops stops =
        assertInstanceOf(Registration.Stops.class, wedge(FaceWishes.NONE).faces().registration());
    assertEquals(2, stops.lines().size());
    assertEquals(500, stops.lines().get(0).length(), 1e-9);
    Part part = Benches.routedBoard(300, 200);
    EdgeOperation edge = Benches.edge("edge", part, Benches.flush(12.7));
    Registration.Lines lines =
        assertInstanceOf(Registration.Lines.class, Benches.plan(part, edge).faces().registration());
    assertEquals(2, lines.lines().size());
    for (FaceWishes.Register how : List.of(FaceWishes.Register.PINS, FaceWishes.Register.STOPS)) {
      assertThrows(Problem.class, () -> Benches.plan(part, register(how), edge));
    }
  }

  /** 9.5 + 9.5 in stock of 19: the two floors meet; half a millimetre less and they do not. */
  @Test
  void recessesFromBothFacesMustNotMeet() {
    Part board = Benches.board(300, 200);
    Recess front =
        Benches.recess(
            "front", Face.A, Benches.flush(12.7), Benches.box("front", 120, 100, 60, 30, 10), 9.5);
    Recess back =
        Benches.recess(
            "back", Face.B, Benches.flush(12.7), Benches.box("back", 150, 100, 60, 30, 10), 9.5);
    Problem refused = assertThrows(Problem.class, () -> Benches.plan(board, front, back));
    assertTrue(
        refused.getMessage().startsWith("back from face B meets front from face A near x 135 mm"),
        refused::getMessage);
    Recess shallower = Benches.recess("back", Face.B, Benches.flush(12.7), back.edge(), 9);
    assertEquals(2, Benches.plan(board, front, shallower).operations().size());
    Drilling drilled =
        new Drilling(
            Head.of("screw", Face.B),
            List.of(new Hole(new Point(120, 100), 4, OptionalDouble.of(12), "screw")));
    assertThrows(Problem.class, () -> Benches.plan(board, front, drilled));
  }
}
