package org.bearingline.routing.operation;

import static org.bearingline.routing.operation.Benches.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pairs of collars that woodworkers report to fit, and that they report not to. */
class InlayFitTest {

  private static final Part BOARD = Benches.board(500, 400);

  /**
   * Millimetres. Sources, row by row: forum table of recess pairs for a master copied with 1/8 and
   * 3/8 (three rows); forum, 10 mm bit with bushes of 20 and 40; forum, 1/4 with 3/8 then 3/8 with
   * 1 in; published pairs 5 mm with 10 and 20, 1/8 with 1/2 and 3/4; usual kit, from memory, 1/8
   * with 5/16 and 9/16.
   */
  @ParameterizedTest
  @CsvSource({
    "3.175, 15.875, 3.175, 9.525",
    "6.35, 19.05, 3.175, 9.525",
    "12.7, 25.4, 3.175, 9.525",
    "10, 40, 10, 20",
    "9.525, 25.4, 6.35, 9.525",
    "5, 20, 5, 10",
    "3.175, 19.05, 3.175, 12.7",
    "3.175, 14.2875, 3.175, 7.9375"
  })
  void fits(double pocketBit, double pocketCollar, double plugBit, double plugCollar) {
    Tooling pocket = Benches.collar(pocketBit, pocketCollar);
    Tooling plug = Benches.collar(plugBit, plugCollar);
    InlayFit fit = InlayFit.of(pocket, plug);
    assertTrue(fit.fits());
    assertEquals(0, fit.gap(), 1e-9);
    assertEquals(pocketCollar, InlayFit.collarForPocket(pocketBit, plug).diameter(), 1e-9);
  }

  /**
   * A user's 1/4 bit with collars 1/2 and 3/4 does not fit: the edges lie at 1/4 and 3/8, 1/8 out a
   * side. Another's 10 mm bit with the 17 mm bush for both steps: 13.5 against 3.5.
   */
  @ParameterizedTest
  @CsvSource({"6.35, 19.05, 6.35, 12.7, 3.175", "10, 17, 10, 17, 10"})
  void doesNotFit(
      double pocketBit, double pocketCollar, double plugBit, double plugCollar, double gap) {
    InlayFit fit =
        InlayFit.of(Benches.collar(pocketBit, pocketCollar), Benches.collar(plugBit, plugCollar));
    assertEquals(gap, fit.gap(), 1e-9);
    assertTrue(!fit.fits());
  }

  private static OperationPlan planned(Tooling pocket, Tooling plug) {
    Target edge = Benches.box("heart", 250, 200, 90, 60, 10);
    return Benches.plan(
        BOARD,
        new InlayPocket(Head.of("pocket", Face.A), pocket, edge, 3),
        new InlayPlug(Head.of("plug", Face.A), plug, edge, "pocket", 4));
  }

  @Test
  void pocketAndPlugComeFromOneOpeningAndAreOneSize() {
    OperationPlan plan =
        planned(Benches.collar(INCH / 8, 0.75 * INCH), Benches.collar(INCH / 8, INCH / 2));
    assertEquals(1, plan.templates().size());
    assertEquals(90 + 0.625 * INCH, Benches.opening(plan, "pocket").width(), 1e-6);
    double pocket = plan.operations().get(0).made().area();
    double plug = plan.operations().get(1).made().area();
    double designed = 90 * 60 - (4 - Math.PI) * 100;
    assertEquals(designed, pocket, 0.01);
    assertEquals(designed, plug, 0.01);
  }

  @Test
  void aPlugThatWouldNotFitIsRefusedWithTheCollarThatWould() {
    Problem refused =
        assertThrows(
            Problem.class,
            () ->
                planned(Benches.collar(INCH / 4, 0.75 * INCH), Benches.collar(INCH / 4, INCH / 2)));
    assertTrue(
        refused.getMessage().contains("too small, 3.175 mm (1/8 in) of gap"), refused::getMessage);
    assertTrue(refused.getMessage().contains("a collar of 25.4 mm (1 in)"), refused::getMessage);
  }
}
