package org.bearingline.routing.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.Face;
import org.junit.jupiter.api.Test;

/** Slot cutters: depth = (cutter − bearing) / 2, as in a published how-to: 2 and 1 give 1/2. */
class GrooveSetupTest {

  private static final double IN = 25.4;

  private static GrooveRequest ask(
      double thick, double width, double into, double limit, double... bearings) {
    return new GrooveRequest(
        "groove",
        new SlotCutter(new Cutter(2 * IN), new Follower.Bearing(IN), thick * IN),
        Face.A,
        IN / 4,
        width * IN,
        into * IN,
        limit == 0 ? OptionalDouble.empty() : OptionalDouble.of(limit * IN),
        DoubleStream.of(bearings).mapToObj(b -> new Follower.Bearing(b * IN)).toList());
  }

  private static String refusal(GrooveRequest request) {
    return assertThrows(Problem.class, () -> GrooveSetup.of(request, Units.INCH)).getMessage();
  }

  @Test
  void halfAnInchGoesInByFourBites() {
    GrooveSetup setup = GrooveSetup.of(ask(0.25, 0.25, 0.5, 0), Units.INCH);
    assertEquals(1, setup.heights().size());
    assertEquals(0.25 * IN, setup.heights().get(0).nearSide(), 1e-9);
    double[] spacers = {0.375, 0.25, 0.125, 0};
    for (int i = 0; i < 4; i++) {
      assertEquals(spacers[i] * IN, setup.bites().get(i).spacer(), 1e-9);
    }
    assertTrue(setup.steps().isEmpty());
    assertTrue(setup.sentences().get(1).contains("strips of 3/8 in, 1/4 in, 1/8 in"));
    assertEquals(18000, setup.speedCeiling().orElseThrow());
  }

  @Test
  void aWiderGrooveTakesHeightsThatOverlap() {
    GrooveSetup setup = GrooveSetup.of(ask(0.25, 0.625, 0.125, 0), Units.INCH);
    assertEquals(3, setup.heights().size());
    assertEquals(0.25 * IN, setup.heights().get(0).nearSide(), 1e-9);
    assertEquals(0.375 * IN, setup.heights().get(0).spacer(), 1e-9);
    assertEquals((0.25 + 0.625 - 0.25) * IN, setup.heights().get(2).nearSide(), 1e-9);
    for (int i = 1; i < 3; i++) {
      double rise = setup.heights().get(i).nearSide() - setup.heights().get(i - 1).nearSide();
      assertTrue(rise > 0 && rise <= 0.25 * IN + 1e-9, "no ridge stays between two heights");
    }
  }

  @Test
  void bearingsOfTheKitGoInByStepsNoDeeperThanABite() {
    // 1-7/8, 1-3/4, 1-1/2, 1-1/4 go in 1/16, 1/8, 1/4, 3/8; the first is not needed.
    GrooveSetup setup =
        GrooveSetup.of(ask(0.25, 0.25, 0.5, 0, 1.25, 1.875, 1.5, 1.75, 0.875), Units.INCH);
    List<String> steps =
        setup.steps().stream().map(b -> Length.print(b.diameter(), Units.INCH)).toList();
    assertEquals(List.of("1-3/4 in", "1-1/2 in", "1-1/4 in", "1 in"), steps);
    assertTrue(GrooveSetup.of(ask(0.25, 0.25, 0.5, 0, 1.25), Units.INCH).steps().isEmpty());
  }

  @Test
  void whatCannotBeCutIsRefused() {
    assertTrue(refusal(ask(0.25, 0.1875, 0.5, 0)).contains("thinner cutter"));
    assertTrue(refusal(ask(0.25, 0.25, 0.625, 0)).contains("take a bearing of 3/4 in"));
    assertTrue(refusal(ask(0.25, 0.25, 0.5, 0.75)).contains("deeper than the 1/2 in"));
    assertThrows(Problem.class, () -> ask(0.25, Double.NaN, 0.5, 0));
    assertThrows(Problem.class, () -> ask(0.25, 0.25, Double.POSITIVE_INFINITY, 0));
  }
}
