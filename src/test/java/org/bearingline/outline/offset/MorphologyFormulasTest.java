package org.bearingline.outline.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Offsets and leftovers against closed formulas, under moves, mirrors and scales. */
class MorphologyFormulasTest {

  /** Steiner's formula for a convex loop: A + L·d + π·d², L + 2π·d. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 6.35, 40, 500})
  void convexLoopGrowsBySteinersFormula(double d) {
    Region convex =
        Region.of(
            Outline.of(
                Loop.polygon(
                    List.of(
                        new Point(0, 0),
                        new Point(80, -13),
                        new Point(121, 40),
                        new Point(60, 77),
                        new Point(-9, 31)))));
    Outline grown = Morphology.dilate(convex, d).region().pieces().get(0);
    double length = convex.pieces().get(0).length();
    double area = convex.area() + length * d + Math.PI * d * d;
    assertEquals(area, grown.area(), 1e-12 * area);
    assertEquals(length + 2 * Math.PI * d, grown.length(), 1e-9);
  }

  private static Region notched(double degrees) {
    double h = 60;
    double w = h * Math.tan(Math.toRadians(degrees / 2));
    return Region.of(
        Outline.of(
            Loop.polygon(
                List.of(
                    new Point(-400, -50),
                    new Point(400, -50),
                    new Point(400, h),
                    new Point(w, h),
                    new Point(0, 0),
                    new Point(-w, h),
                    new Point(-400, h)))));
  }

  /** Corner of angle θ in the waste: area r²(cot(θ/2) − (π − θ)/2), depth r(1/sin(θ/2) − 1). */
  @ParameterizedTest
  @ValueSource(doubles = {30, 45, 60, 90, 120, 135, 150})
  void cornerLeftoverHasTheFormulasAreaAndDepth(double degrees) {
    double r = 9.525;
    double theta = Math.toRadians(degrees);
    double area = r * r * (1 / Math.tan(theta / 2) - (Math.PI - theta) / 2);
    double depth = r * (1 / Math.sin(theta / 2) - 1);
    for (double scale : new double[] {0.01, 1, 100}) {
      Similarity moved =
          Similarity.rotation(17.3, new Point(33, 11))
              .then(Similarity.mirror(new Point(1, 2), new Point(-4, 9)))
              .then(Similarity.scaling(scale));
      Region part = notched(degrees).transformed(moved);
      OffsetResult closed = Morphology.close(part, r * scale);
      assertTrue(closed.isExact());
      Region leftover = Overlay.difference(closed.region(), part);
      assertEquals(1, leftover.pieces().size());
      assertEquals(3, leftover.size());
      assertEquals(area * scale * scale, leftover.area(), 1e-9 * scale * scale);
      assertEquals(
          depth * scale, closed.region().distanceTo(moved.apply(Point.ORIGIN)), 1e-9 * scale);
      assertTrue(Overlay.difference(part, closed.region()).isEmpty());
    }
  }

  @Test
  void fallBackAgreesWithTheExactWayWithinItsTolerance() {
    Region part = notched(90);
    Unproven why = new Unproven("a test asks for it", 0, 0, Frame.of(new Bounds(0, 0, 1, 1), 0));
    for (Morphology.Operation operation : Morphology.Operation.values()) {
      OffsetResult rough = new FallBack(part, 6).run(operation, why);
      Region fine =
          switch (operation) {
            case DILATE -> Morphology.dilate(part, 6).region();
            case ERODE -> Morphology.erode(part, 6).region();
            case CLOSE -> Morphology.close(part, 6).region();
            case OPEN -> Morphology.open(part, 6).region();
          };
      assertTrue(rough.caution().isPresent());
      assertEquals(fine.area(), rough.region().area(), rough.tolerance() * 2000);
      assertTrue(rough.region().size() <= 3 * fine.size(), "arcs are found again");
    }
  }
}
