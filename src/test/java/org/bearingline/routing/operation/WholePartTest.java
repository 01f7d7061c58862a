package org.bearingline.routing.operation;

import static org.bearingline.routing.operation.Benches.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.RoutingResult;
import org.junit.jupiter.api.Test;

class WholePartTest {

  private static RoutingResult whole(Part part, Operation... operations) {
    return Benches.plan(part, operations).asOne(Benches.settings(), Kit.usual());
  }

  @Test
  void theWholeCarriesWhatEachOperationBrings() {
    Part part = Benches.routedBoard(400, 200);
    RoutingResult whole =
        whole(
            part,
            Benches.edge("rough", part, Benches.flush(INCH / 2)),
            Benches.edge("fine", part, Benches.flush(INCH / 4)),
            new ThroughOpening(
                Head.of("window", Face.A),
                Benches.flush(INCH / 2),
                Benches.box("window", 100, 100, 90, 60, 15)),
            Benches.recess(
                "pull",
                Benches.collar(INCH / 2, INCH * 0.75),
                Benches.box("pull", 280, 100, 90, 60, 15)),
            new Drilling(
                Head.of("peg", Face.A),
                List.of(new Hole(new Point(200, 30), 8, OptionalDouble.of(10), "peg"))));
    assertEquals(
        List.of("window", "pull"), whole.part().cavities().stream().map(Cavity::name).toList());
    assertEquals(1, whole.part().marks().size());
    assertEquals(1, whole.templates().size());
    assertEquals(2, whole.templates().get(0).plate().openings().size());
    assertTrue(whole.reach().isComplete());
    assertTrue(whole.proof().orElseThrow().maxDeviation() < 1e-6);
    // The saw goes round the board once, though two bits do, and once inside the window.
    assertEquals(1, whole.roughLine().orElseThrow().paths().size());
    assertEquals(1, whole.roughLine().orElseThrow().openings().size());
    assertEquals(19, whole.passes().orElseThrow().thickness(), 1e-9);
  }

  /**
   * Sharp corners: a recess of 1/2 in leaves 4, an opening of 3/8 in leaves 4, numbered together.
   */
  @Test
  void leftoversOfAllOperationsAreNumberedInOneRow() {
    RoutingResult whole =
        whole(
            Benches.board(400, 200),
            Benches.recess("left", Benches.flush(12.7), Benches.box("left", 100, 100, 80, 60, 0)),
            Benches.recess(
                "right", Benches.flush(9.525), Benches.box("right", 280, 100, 80, 60, 0)));
    List<Leftover> leftovers = whole.reach().leftovers();
    assertEquals(8, leftovers.size());
    for (int i = 0; i < leftovers.size(); i++) {
      assertEquals(i + 1, leftovers.get(i).number());
      double r = i < 4 ? 6.35 : 4.7625;
      assertEquals(r * (Math.sqrt(2) - 1), leftovers.get(i).depth(), 1e-5);
      assertEquals(r * r * (1 - Math.PI / 4), leftovers.get(i).area(), 1e-3);
    }
  }
}
