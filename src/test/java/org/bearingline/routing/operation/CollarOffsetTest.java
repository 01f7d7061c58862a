package org.bearingline.routing.operation;

import static org.bearingline.routing.operation.Benches.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of collars as published: the near edge of the cut lies (OD − d)/2 inside the edge
 * of the template, so an inside template is larger than the recess by OD − d and an outside one
 * smaller than the part by the same.
 */
class CollarOffsetTest {

  private static final Part BOARD = Benches.board(600, 500);

  /**
   * Sources: a magazine's tip; two woodworking forums; a UK forum with a drawing, in mm; a forum.
   */
  @ParameterizedTest
  @CsvSource({"0.75, 0.5, 0.125", "0.75, 0.25, 0.25", "0.59055, 0.35433, 0.11811", "1, 0.5, 0.25"})
  void theEdgeOfTheTemplateStandsHalfTheDifferenceAway(double outside, double bit, double offset) {
    Recess recess =
        Benches.recess(
            "recess",
            Benches.collar(bit * INCH, outside * INCH),
            Benches.box("recess", 300, 250, 120, 80, 20));
    OperationPlan plan = Benches.plan(BOARD, recess);
    assertEquals(-offset * INCH, plan.templates().get(0).services().get(0).offset(), 1e-3);
    assertEquals(120 + 2 * offset * INCH, Benches.opening(plan, "recess").width(), 2e-3);
  }

  /** Woodworking forum: OD 3/4, bit 1/4, hole 8 × 4 asks for an opening 8-1/2 × 4-1/2. */
  @Test
  void openingForAHole() {
    ThroughOpening hole =
        new ThroughOpening(
            Head.of("hole", Face.A),
            Benches.collar(INCH / 4, 0.75 * INCH),
            Benches.box("hole", 300, 250, 8 * INCH, 4 * INCH, 0.5 * INCH));
    Bounds opening = Benches.opening(Benches.plan(BOARD, hole), "hole");
    assertEquals(8.5 * INCH, opening.width(), 1e-6);
    assertEquals(4.5 * INCH, opening.height(), 1e-6);
  }

  /** Woodworking forum: OD 3/4, bit 1/2, circle of 2: hole 2-1/4, outside pattern 1-3/4. */
  @Test
  void insideAndOutsideOfACircle() {
    Loop circle = Loop.of(Arc.circle(new Point(200, 200), INCH));
    Tooling tool = Benches.collar(INCH / 2, 0.75 * INCH);
    Recess hole = Benches.recess("hole", tool, Target.opening("hole", Contour.routed(circle)));
    Part disc = Benches.part(Contour.routed(circle));
    assertEquals(2.25 * INCH, Benches.opening(Benches.plan(BOARD, hole), "hole").width(), 1e-6);
    assertEquals(
        1.75 * INCH,
        Benches.opening(Benches.plan(disc, Benches.edge("disc", disc, tool)), "disc").width(),
        1e-6);
  }

  /**
   * Woodworking forum: a mortise 3/8 × 1 with a 3/8 bit and a 1/2 collar wants a slot 1/2 wide; its
   * length, 1-1/8, follows by the same rule.
   */
  @Test
  void slotForAMortise() {
    Mortise mortise =
        Mortise.about(
            Head.of("mortise", Face.A),
            Benches.collar(0.375 * INCH, INCH / 2),
            new Point(300, 250),
            INCH,
            0.375 * INCH,
            0,
            OptionalDouble.of(12));
    OperationPlan plan = Benches.plan(BOARD, mortise);
    Bounds slot = Benches.opening(plan, "mortise");
    assertEquals(0.5 * INCH, slot.height(), 1e-6);
    assertEquals(1.125 * INCH, slot.width(), 1e-6);
    assertEquals(
        "The opening of the template is 1-1/8 in × 1/2 in, 1/16 in outside the mortise all round.",
        plan.operations().get(0).sentences().get(0));
  }

  /**
   * A magazine once answered 5-1/16 × 7-1/16 for OD 1/2, bit 3/8 and a hole of 5 × 7: it added one
   * side only. Right is 5-1/8 × 7-1/8.
   */
  @Test
  void bothSidesCount() {
    Recess recess =
        Benches.recess(
            "hole",
            Benches.collar(0.375 * INCH, INCH / 2),
            Benches.box("hole", 300, 250, 7 * INCH, 5 * INCH, INCH));
    Bounds opening = Benches.opening(Benches.plan(BOARD, recess), "hole");
    assertEquals(7.125 * INCH, opening.width(), 1e-6);
    assertEquals(5.125 * INCH, opening.height(), 1e-6);
    assertNotEquals(5.0625 * INCH, opening.height(), 0.5);
  }

  /**
   * Tip sheet of a woodworking programme: template 1/8 larger all round than a plate; OD 1-1/4 with
   * a 1 in bit cuts the recess of the plate, then a 3/8 bit in the same collar goes through. The
   * ledge that stays is 7/16 − 1/8 = 5/16 wide.
   */
  @Test
  void oneTemplateAndOneCollarLeaveALedge() {
    Target plate = Benches.box("plate", 300, 250, 10 * INCH, 8 * INCH, INCH);
    Ledge ledge = new Ledge(Head.of("ledge", Face.A), Benches.collar(INCH, 1.25 * INCH), plate, 6);
    Target inner =
        Target.opening("opening", Rim.inside(Head.of("opening", Face.A), plate, 5.0 / 16 * INCH));
    ThroughOpening opening =
        new ThroughOpening(
            Head.of("opening", Face.A), Benches.collar(0.375 * INCH, 1.25 * INCH), inner);
    OperationPlan plan = Benches.plan(BOARD, ledge, opening);
    assertEquals(1, plan.templates().size());
    assertEquals(10.25 * INCH, Benches.opening(plan, "ledge").width(), 1e-6);
    assertEquals(
        10 * INCH - 0.625 * INCH,
        plan.operations().get(1).made().bounds().width(),
        1e-4,
        "the opening");
  }
}
