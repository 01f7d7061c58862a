package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.bearingline.Seed;
import org.bearingline.outline.offset.Morphology;

/** Offsets, closings and openings of random outlines against brute force on a grid of cells. */
@Domain(OutlineArbitraries.class)
class OffsetOnGridTest {

  private static final int CELLS = 120;

  private static GridSimulation grid(Case given) {
    return GridSimulation.of(given.region(), given.radius() * 1.2, CELLS);
  }

  @Property(tries = 40, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void offsetsAgree(@ForAll Case given) {
    GridSimulation grid = grid(given);
    double r = given.radius();
    assertEquals(
        List.of(),
        grid.dilate(r).disagreements(Morphology.dilate(given.region(), r).region()),
        "dilation");
    assertEquals(
        List.of(),
        grid.erode(r).disagreements(Morphology.erode(given.region(), r).region()),
        "erosion");
  }

  @Property(tries = 40, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void closingsAndOpeningsAgree(@ForAll Case given) {
    GridSimulation grid = grid(given);
    double r = given.radius();
    assertEquals(
        List.of(),
        grid.close(r).disagreements(Morphology.close(given.region(), r).region()),
        "closing");
    assertEquals(
        List.of(),
        grid.open(r).disagreements(Morphology.open(given.region(), r).region()),
        "opening");
  }
}
