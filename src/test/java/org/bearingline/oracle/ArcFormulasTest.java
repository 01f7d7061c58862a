package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arcs against handbook tables and closed formulas. */
class ArcFormulasTest {

  private static final Point CENTER = new Point(3, -4);

  /**
   * Segments of circles of radius 1, as tabled in <i>Machinery's Handbook</i> (older editions, five
   * places): arc, height, chord and area.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 0.17453, 0.00381, 0.17431, 0.00044",
    "20, 0.34907, 0.01519, 0.34730, 0.00352",
    "30, 0.52360, 0.03407, 0.51764, 0.01180",
    "45, 0.78540, 0.07612, 0.76537, 0.03915",
    "60, 1.04720, 0.13397, 1.00000, 0.09059",
    "90, 1.57080, 0.29289, 1.41421, 0.28540",
    "120, 2.09440, 0.50000, 1.73205, 0.61418"
  })
  void segmentsOfTheHandbook(
      double angle, double length, double height, double chord, double area) {
    double printed = 0.5e-5 + 1e-12;
    for (double start : new double[] {0, 33, 90, 171, 300}) {
      Arc arc = Arc.around(CENTER, 1, start, angle);
      Line back = new Line(arc.end(), arc.start());
      assertEquals(length, arc.length(), printed);
      assertEquals(chord, back.length(), printed);
      assertEquals(height, arc.middle().distanceTo(back.middle()), printed);
      assertEquals(area, Loop.of(arc, back).signedArea(), printed);
      Arc reversed = arc.reversed();
      assertEquals(-area, Loop.of(reversed, back.reversed()).signedArea(), printed);
    }
  }

  /**
   * <i>Machinery's Handbook</i>, 31st edition: p. 79, r = 60 and h = 8 give c = 59.86; c = 16 and h
   * = 6 give r = 8 1/3; p. 50, R = 12 and depth 2 give chord 13.27, angle 67.13°, arc 14.06.
   */
  @ParameterizedTest
  @CsvSource({
    "59.8665, 8, 60, 59.86, 0.01, NaN, NaN",
    "16, 6, 8.3333333333, 16, 1e-9, NaN, NaN",
    "13.2664991614216, 2, 12, 13.27, 0.005, 67.13, 14.06"
  })
  void chordAndRiseOfTheHandbook(
      double chord,
      double rise,
      double radius,
      double printedChord,
      double slack,
      double angle,
      double length) {
    // tan(angle / 4) is the rise over half the chord.
    Arc arc = Arc.ofBulge(new Point(0, 0), new Point(chord, 0), rise / (chord / 2));
    assertEquals(radius, arc.radius(), radius * 1e-5);
    assertEquals(printedChord, arc.start().distanceTo(arc.end()), 0.01);
    assertEquals(rise, -arc.bounds().minY(), 1e-9, "a positive bulge turns left: it hangs below");
    if (angle == angle) {
      assertEquals(angle, arc.sweep(), 0.02);
      assertEquals(length, arc.length(), 0.005);
    }
    assertTrue(Math.abs(printedChord - chord) < slack + 0.01);
  }

  /**
   * DXF reference, LWPOLYLINE group 42: the bulge is the tangent of a quarter of the included
   * angle, negative where the arc goes clockwise from start to end; 1 is a half circle.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 180",
    "-1, -180",
    "0.4142135623730951, 90",
    "-0.4142135623730951, -90",
    "0.2679491924311227, 60",
    "2.414213562373095, 270",
    "1e-6, 0.00022918311805232"
  })
  void bulgeIsTheTangentOfAQuarterOfTheAngle(double bulge, double sweep) {
    Arc arc = Arc.ofBulge(new Point(10, 20), new Point(40, 60), bulge);
    assertEquals(sweep, arc.sweep(), 1e-9);
    assertEquals(bulge, arc.bulge(), 1e-12 * Math.abs(bulge));
    assertEquals(50, 2 * arc.radius() * Math.sin(Math.toRadians(Math.abs(sweep)) / 2), 1e-6);
  }

  @Property(tries = 500, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void anArcOfABulgePassesItsApex(
      @ForAll @DoubleRange(min = -30, max = 30) double bulge,
      @ForAll @DoubleRange(min = -1000, max = 1000) double x,
      @ForAll @DoubleRange(min = 1, max = 1000) double dx) {
    if (Math.abs(bulge) < 1e-3) {
      return;
    }
    Point a = new Point(x, 7);
    Point b = new Point(x + dx, 7);
    Arc arc = Arc.ofBulge(a, b, bulge);
    // The apex lies half the chord times the bulge to the right of the middle of the chord.
    Point apex = new Point(x + dx / 2, 7 - bulge * dx / 2);
    assertEquals(0, arc.middle().distanceTo(apex), 1e-9 * dx * (1 + Math.abs(bulge)));
    assertEquals(0, arc.pointAt(1e-15).distanceTo(a), 1e-9 * dx * (1 + Math.abs(bulge)));
  }

  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void measuresAgreeWithAnotherGeometry(
      @ForAll @DoubleRange(min = 0.5, max = 80) double radius,
      @ForAll @DoubleRange(min = -180, max = 180) double start,
      @ForAll @DoubleRange(min = -360, max = 360) double sweep,
      @ForAll @DoubleRange(min = -100, max = 100) double px,
      @ForAll @DoubleRange(min = -100, max = 100) double py) {
    if (Math.abs(sweep) < 0.01) {
      return;
    }
    Arc arc = Arc.around(CENTER, radius, start, sweep);
    Edge edge = Edge.of(arc);
    assertEquals(edge.distance(px, py), arc.distanceTo(new Point(px, py)), 1e-9);
    double lowX = Double.POSITIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    Bounds box = arc.bounds().grown(1e-9);
    for (int i = 0; i <= 1000; i++) {
      double t = i / 1000.0;
      Point p = arc.pointAt(t);
      assertEquals(0, Math.hypot(edge.x(t) - p.x(), edge.y(t) - p.y()), 1e-9);
      assertTrue(box.contains(p));
      lowX = Math.min(lowX, p.x());
      highY = Math.max(highY, p.y());
    }
    // Between samples the arc rises by no more than the height over one of a thousand steps.
    double height = radius * (1 - Math.cos(Math.toRadians(Math.abs(sweep)) / 2000));
    assertEquals(lowX, arc.bounds().minX(), height + 1e-9);
    assertEquals(highY, arc.bounds().maxY(), height + 1e-9);
    double heading = edge.heading(0.3);
    assertEquals(Math.cos(heading), arc.tangentAt(0.3).x(), 1e-9);
    assertEquals(Math.sin(heading), arc.tangentAt(0.3).y(), 1e-9);
    Arc part = arc.part(0.2, 0.7);
    assertEquals(arc.length() / 2, part.length(), 1e-9);
    assertEquals(0, part.middle().distanceTo(arc.pointAt(0.45)), 1e-9);
  }

  @Test
  void anArcOfAFullTurnIsACircle() {
    Arc circle = Arc.circle(CENTER, 5);
    assertTrue(circle.isFullCircle());
    assertEquals(25 * Math.PI, Loop.of(circle).signedArea(), 1e-12);
    assertEquals(-25 * Math.PI, Loop.of(circle.reversed()).signedArea(), 1e-12);
    assertEquals(new Bounds(-2, -9, 8, 1), circle.bounds());
    assertEquals(10 * Math.PI, circle.length(), 1e-12);
  }

  @Test
  void anArcNeedsARadiusATurnAndEndsOnItsCircle() {
    Point a = new Point(1, 0);
    Point b = new Point(0, 1);
    assertThrows(IllegalArgumentException.class, () -> new Arc(Point.ORIGIN, 0, a, b, 90));
    assertThrows(IllegalArgumentException.class, () -> new Arc(Point.ORIGIN, 1, a, b, 0));
    assertThrows(IllegalArgumentException.class, () -> new Arc(Point.ORIGIN, 1, a, b, 361));
    assertThrows(IllegalArgumentException.class, () -> new Arc(Point.ORIGIN, 1.1, a, b, 90));
    assertThrows(IllegalArgumentException.class, () -> Arc.ofBulge(a, b, 0));
    assertThrows(IllegalArgumentException.class, () -> Arc.ofBulge(a, a, 1));
    assertThrows(IllegalArgumentException.class, () -> Arc.ofBulge(a, b, Double.NaN));
  }
}
