package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.bearingline.Seed;
import org.bearingline.outline.offset.Morphology;

/** Offsets of random outlines against the JTS buffer of a copy flattened to 1e-4 mm. */
@Domain(OutlineArbitraries.class)
class OffsetAgainstJtsTest {

  private static final double TOLERANCE = 1e-4;

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void dilationsAgree(@ForAll Case given) {
    assertEquals(
        List.of(),
        new JtsComparison(given.region(), given.radius(), TOLERANCE)
            .disagreements(Morphology.dilate(given.region(), given.radius()).region()));
  }

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void erosionsAgree(@ForAll Case given) {
    assertEquals(
        List.of(),
        new JtsComparison(given.region(), -given.radius(), TOLERANCE)
            .disagreements(Morphology.erode(given.region(), given.radius()).region()));
  }
}
