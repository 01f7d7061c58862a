package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.bearingline.Seed;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.OffsetResult;

/** Offsets and closings of random outlines against their definition, by dense sampling. */
@Domain(OutlineArbitraries.class)
class OffsetSamplingTest {

  /** mm; what an exact offset may be off by. */
  static final double EXACT = 1e-6;

  private static final int PER_EDGE = 9;

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void dilationLiesAtItsDistance(@ForAll Case given) {
    DenseSampling sampling = new DenseSampling(given.region(), given.radius(), PER_EDGE);
    check(sampling, Morphology.dilate(given.region(), given.radius()));
  }

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void erosionLiesAtItsDistance(@ForAll Case given) {
    DenseSampling sampling = new DenseSampling(given.region(), -given.radius(), PER_EDGE);
    check(sampling, Morphology.erode(given.region(), given.radius()));
  }

  /** A closing's edge lies at its radius inside the dilation, which is sampled on its own. */
  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void closingLiesAtItsRadiusInsideTheDilation(@ForAll Case given) {
    Region dilated = Morphology.dilate(given.region(), given.radius()).region();
    check(
        DenseSampling.secondStep(given.region(), dilated, -given.radius(), PER_EDGE),
        Morphology.close(given.region(), given.radius()));
  }

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void openingLiesAtItsRadiusOutsideTheErosion(@ForAll Case given) {
    Region eroded = Morphology.erode(given.region(), given.radius()).region();
    check(
        DenseSampling.secondStep(given.region(), eroded, given.radius(), PER_EDGE),
        Morphology.open(given.region(), given.radius()));
  }

  private static void check(DenseSampling sampling, OffsetResult result) {
    assertEquals("", result.caution().orElse(""), "the exact way must do");
    Deviation forward = sampling.forward(result.region());
    assertTrue(forward.worst() <= EXACT, () -> "off its distance: " + forward);
    Deviation backward = sampling.backward(result.region());
    assertTrue(backward.worst() <= EXACT, () -> "not on the result: " + backward);
  }
}
