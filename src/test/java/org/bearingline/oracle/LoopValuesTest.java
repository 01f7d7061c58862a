package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Loops, outlines and regions against closed formulas and another inside test. */
@Domain(OutlineArbitraries.class)
@Domain(DomainContext.Global.class)
class LoopValuesTest {

  /** 500 regions, 10 points each: the even-odd rule against the angle wound round the point. */
  @Property(tries = 500, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void insideAgreesWithTheWindingAngle(@ForAll Case given) {
    Region region = given.region();
    Edges edges = Edges.of(region);
    Bounds box = region.bounds().grown(3);
    for (int i = 0; i < 10; i++) {
      Point p =
          new Point(
              box.minX() + box.width() * ((0.3 + i * 0.6180339887498949) % 1),
              box.minY() + box.height() * (i + 0.5) / 10);
      assertInside(region, edges, p);
    }
  }

  /** Level with corners, tangents and the tops of arcs, where a ray meets the edge at a point. */
  @Property(tries = 500, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void insideHoldsLevelWithCornersAndArcTops(
      @ForAll Case given, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Region region = given.region();
    Edges edges = Edges.of(region);
    Bounds box = region.bounds().grown(3);
    double x = box.minX() + box.width() * share;
    for (Loop loop : region.loops()) {
      for (Primitive piece : loop.primitives()) {
        assertInside(region, edges, new Point(x, piece.start().y()));
        assertInside(region, edges, new Point(x, piece.bounds().minY()));
        assertInside(region, edges, new Point(x, piece.bounds().maxY()));
      }
    }
  }

  private static void assertInside(Region region, Edges edges, Point p) {
    if (edges.distance(p.x(), p.y()) > 1e-6) {
      assertEquals(edges.contains(p.x(), p.y()), region.contains(p), () -> "at " + p);
    }
    assertEquals(edges.distance(p.x(), p.y()), region.distanceTo(p), 1e-9);
  }

  /** Green's formula far from the origin: a kilometre away only the points' rounding is left. */
  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void areaAndLengthStayUnderMotion(@ForAll Case given) {
    Region region = given.region();
    Region far =
        region.transformed(
            Similarity.rotation(37, Point.ORIGIN).then(Similarity.translation(1e6, -1e6)));
    // Each point is rounded by half an ulp of 1e6; it counts with the lever of radius and length.
    double lever = 0;
    for (Loop loop : region.loops()) {
      for (Primitive p : loop.primitives()) {
        lever += p.length() + (p.curvature() == 0 ? 0 : 1 / Math.abs(p.curvature()));
      }
    }
    assertEquals(region.area(), far.area(), 4 * Math.ulp(1e6) * lever);
    Region large = region.transformed(Similarity.scaling(100));
    // Loop by loop and against the outer loop: a hair-thin ring is a difference of large areas.
    double outer = region.pieces().stream().mapToDouble(o -> o.outer().signedArea()).sum();
    assertEquals(region.area(), large.area() / 1e4, 1e-12 * outer);
    Region mirrored = region.transformed(Similarity.mirror(new Point(1, 2), new Point(-7, 5)));
    assertEquals(region.area(), mirrored.area(), 1e-12 * outer);
    double length = region.pieces().get(0).length();
    assertEquals(length, mirrored.pieces().get(0).length(), 1e-8 * length);
  }

  /** Area of the same region by JTS over chords; an inscribed chord loses 2/3 of its height. */
  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void areaAgreesWithAFinePolygon(@ForAll Case given) {
    double polygon = new JtsReference(1e-5).flat(given.region()).getArea();
    double length = given.region().pieces().stream().mapToDouble(Outline::length).sum();
    assertEquals(polygon, given.region().area(), 1e-5 * length);
  }

  @Test
  void areasOfClosedFormulas() {
    // A slot: a rectangle and a circle. A ring: the difference of two circles.
    Loop slot =
        Trace.from(-20, -5)
            .to(20, -5)
            .round(20, 0, 20, 5, true)
            .to(-20, 5)
            .round(-20, 0, -20, -5, true)
            .closed();
    assertEquals(400 + 25 * Math.PI, slot.signedArea(), 1e-10);
    assertEquals(80 + 10 * Math.PI, slot.length(), 1e-10);
    assertEquals(new Bounds(-25, -5, 25, 5), slot.bounds());
    Outline ring =
        Outline.of(
            Loop.of(Arc.circle(new Point(7, 8), 10)), Loop.of(Arc.circle(new Point(7, 8), 4)));
    assertEquals(84 * Math.PI, ring.area(), 1e-10);
    assertEquals(28 * Math.PI, ring.length(), 1e-10);
    assertTrue(ring.contains(new Point(13, 8)));
    assertTrue(!ring.contains(new Point(8, 8)));
    // Each loop is turned to its sense, however it was given.
    assertTrue(ring.outer().isCounterClockwise());
    assertTrue(!ring.openings().get(0).isCounterClockwise());
    // A disc with a slot of half width w through it: circle, rectangle ends and half circles.
    double w = 6;
    double overlap = 2 * (w * Math.sqrt(30 * 30 - w * w) + 30 * 30 * Math.asin(w / 30));
    double whole = 900 * Math.PI + 2 * 2 * w * 54 + w * w * Math.PI - overlap;
    assertEquals(whole, DiscOutlines.crossed(30, w, 54).signedArea(), 1e-9);
  }

  @Test
  void aLoopIsClosedAndWelded() {
    Point a = new Point(0, 0);
    Point b = new Point(100, 0);
    Point c = new Point(50, 80);
    assertThrows(IllegalArgumentException.class, () -> new Loop(List.of()));
    assertThrows(IllegalArgumentException.class, () -> Loop.of(new Line(a, b), new Line(b, c)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Loop.of(new Line(a, b), new Line(new Point(100, 1e-6), c), new Line(c, a)));
    Loop welded = Loop.of(new Line(a, b), new Line(new Point(100, 1e-8), c), new Line(c, a));
    assertEquals(b, welded.primitives().get(1).start());
  }
}
