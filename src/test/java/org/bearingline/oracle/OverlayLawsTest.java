package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BinaryOperator;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.bearingline.Seed;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;

/** Set algebra of regions: areas by inclusion and exclusion, membership point by point. */
@Domain(OutlineArbitraries.class)
@Domain(DomainContext.Global.class)
class OverlayLawsTest {

  /** Share of the area that sums may differ by: slivers on coincident edges. */
  private static final double SAME = 1e-9;

  /** Share of each loop's area that is rounding: of a thin ring hardly anything is left of it. */
  private static final double ROUNDING = 1e-14;

  /** mm² that sums of areas may differ by. */
  private static double near(Region... regions) {
    double sum = 0;
    for (Region region : regions) {
      sum += SAME * region.area();
      for (Loop loop : region.loops()) {
        sum += ROUNDING * Math.abs(loop.signedArea());
      }
    }
    return sum;
  }

  private static Region beside(Case other, double dx, double dy, Region region) {
    Bounds from = other.region().bounds();
    Bounds to = region.bounds();
    return other
        .region()
        .transformed(
            Similarity.translation(
                to.center().x() - from.center().x() + dx,
                to.center().y() - from.center().y() + dy));
  }

  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void areasAddUp(
      @ForAll Case one,
      @ForAll Case two,
      @ForAll @DoubleRange(min = -60, max = 60) double dx,
      @ForAll @DoubleRange(min = -60, max = 60) double dy) {
    Region a = one.region();
    Region b = beside(two, dx, dy, a);
    double sum = a.area() + b.area();
    double union = Overlay.union(a, b).area();
    double common = Overlay.intersection(a, b).area();
    double rest = Overlay.difference(a, b).area();
    assertEquals(sum, union + common, near(a, b), "union and intersection");
    assertEquals(a.area(), rest + common, near(a, b), "difference and intersection");
    assertTrue(common >= 0 && rest >= 0 && union >= Math.max(a.area(), b.area()) - near(a, b));
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void pointsAreWhereTheyBelong(
      @ForAll Case one,
      @ForAll Case two,
      @ForAll @DoubleRange(min = -60, max = 60) double dx,
      @ForAll @DoubleRange(min = -60, max = 60) double dy) {
    Region a = one.region();
    Region b = beside(two, dx, dy, a);
    assertPoints(a, b, Overlay.union(a, b), Boolean::logicalOr);
    assertPoints(a, b, Overlay.intersection(a, b), Boolean::logicalAnd);
    assertPoints(a, b, Overlay.difference(a, b), (inA, inB) -> inA && !inB);
  }

  /** The closing less its input: all edges of the input that are not filled coincide. */
  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void leftoverHasTheDifferenceOfTheAreas(@ForAll Case given) {
    Region closed = Morphology.close(given.region(), given.radius()).region();
    Region leftover = Overlay.difference(closed, given.region());
    double expected = closed.area() - given.region().area();
    // Along a coincident edge a sliver no wider than the welding tolerance may stay or go.
    assertEquals(expected, leftover.area(), 1e-6, "mm² of leftover");
    assertPoints(closed, given.region(), leftover, (inA, inB) -> inA && !inB);
  }

  /** A region with itself: everything coincides. */
  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void aRegionWithItself(@ForAll Case given) {
    Region a = given.region();
    assertEquals(a.area(), Overlay.union(a, a).area(), near(a));
    assertEquals(a.area(), Overlay.intersection(a, a).area(), near(a));
    assertEquals(0, Overlay.difference(a, a).area(), near(a));
  }

  private static void assertPoints(Region a, Region b, Region made, BinaryOperator<Boolean> rule) {
    Edges inA = Edges.of(a);
    Edges inB = Edges.of(b);
    Edges inMade = Edges.of(made);
    Bounds box = a.bounds().union(b.bounds()).grown(1);
    for (int i = 0; i < 300; i++) {
      double x = box.minX() + box.width() * ((i * 0.6180339887498949) % 1);
      double y = box.minY() + box.height() * ((i + 0.5) / 300);
      if (Math.min(inA.distance(x, y), inB.distance(x, y)) < 1e-6) {
        continue;
      }
      int expected = rule.apply(inA.contains(x, y), inB.contains(x, y)) ? 1 : 0;
      assertEquals(expected, inMade.winding(x, y), "at " + x + ", " + y);
    }
  }
}
