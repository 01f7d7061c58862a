package org.bearingline.outline.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arcs by what is known of them, and tangent continuation. */
class ArcsTest {

  private static final Point A = new Point(0, 0);

  /** Machinery's Handbook, 31st ed., p. 79: c = 16, h = 6 gives r = 8 1/3. */
  @Test
  void radiusFromChordAndRise() {
    Arc arc = ArcBy.chordAndRise(A, new Point(16, 0), 6, Side.LEFT);
    assertEquals(25.0 / 3, arc.radius(), 1e-12);
    assertEquals(6, arc.middle().y(), 1e-12);
    assertFalse(arc.isCounterClockwise());
    assertEquals(25.0 / 3, CircleSegment.ofChordAndRise(16, 6).radius(), 1e-12);
  }

  /** Machinery's Handbook, 31st ed., p. 79: r = 60, h = 8 gives c = 59.86. */
  @Test
  void chordFromRadiusAndRise() {
    assertEquals(59.86, CircleSegment.ofRadiusAndRise(60, 8).chord(), 0.01);
  }

  /** Machinery's Handbook, 31st ed., p. 50: R 12, depth 2; chord 13.27, 67.13°, arc 14.06. */
  @Test
  void segmentOfTheHandbook() {
    CircleSegment segment = CircleSegment.ofRadiusAndRise(12, 2);
    assertEquals(13.27, segment.chord(), 0.01);
    assertEquals(67.13, segment.angle(), 0.02);
    assertEquals(14.06, segment.arcLength(), 0.01);
    assertEquals(2, CircleSegment.ofRadiusAndChord(12, segment.chord()).rise(), 1e-12);
  }

  /** Mathematics help page: chord 21, rise 6; r 12.1875, 118.97953°, arc 25.308373. */
  @Test
  void segmentOfTheHelpPage() {
    CircleSegment segment = CircleSegment.ofChordAndRise(21, 6);
    assertEquals(12.1875, segment.radius(), 1e-12);
    assertEquals(118.97953, segment.angle(), 1e-5);
    assertEquals(25.308373, segment.arcLength(), 1e-6);
  }

  /** Segments of radius 1 as tabled in Machinery's Handbook. */
  @ParameterizedTest
  @CsvSource({
    "10, 0.17453, 0.00381, 0.17431, 0.00044", "20, 0.34907, 0.01519, 0.34730, 0.00352",
    "30, 0.52360, 0.03407, 0.51764, 0.01180", "45, 0.78540, 0.07612, 0.76537, 0.03915",
    "60, 1.04720, 0.13397, 1.00000, 0.09059", "90, 1.57080, 0.29289, 1.41421, 0.28540",
    "120, 2.09440, 0.50000, 1.73205, 0.61418"
  })
  void segmentTable(double angle, double arc, double rise, double chord, double area) {
    CircleSegment segment = new CircleSegment(1, angle);
    assertEquals(arc, segment.arcLength(), 6e-6);
    assertEquals(rise, segment.rise(), 6e-6);
    assertEquals(chord, segment.chord(), 6e-6);
    assertEquals(area, segment.area(), 6e-6);
  }

  @Property(seed = Seed.FIXED)
  void anArcIsFoundAgainFromThreeOfItsPoints(
      @ForAll @DoubleRange(min = 1, max = 1000) double radius,
      @ForAll @DoubleRange(min = -180, max = 180) double from,
      @ForAll @DoubleRange(min = 1, max = 350) double sweep,
      @ForAll boolean left) {
    Arc arc = Arc.around(new Point(40, -70), radius, from, left ? sweep : -sweep);
    Arc again = ArcBy.throughPoint(arc.start(), arc.pointAt(0.3), arc.end());
    assertEquals(arc.sweep(), again.sweep(), 1e-6);
    assertEquals(radius, again.radius(), 1e-6 * radius);
    Side side = left ? Side.RIGHT : Side.LEFT;
    Arc byRadius = ArcBy.chordAndRadius(arc.start(), arc.end(), radius, side, sweep > 180);
    if (Math.abs(sweep - 180) > 0.1) {
      assertTrue(byRadius.center().distanceTo(arc.center()) < 1e-6 * radius);
      assertEquals(arc.sweep(), byRadius.sweep(), 1e-5);
    }
    Primitive tangent = Continuation.to(arc.start(), arc.tangentAt(0), arc.end());
    assertTrue(tangent.middle().distanceTo(arc.middle()) < 1e-6 * radius);
  }

  @Test
  void aHalfCircleByItsRadius() {
    Arc arc = ArcBy.chordAndRadius(A, new Point(20.000000000001, 0), 10, Side.RIGHT, false);
    assertEquals(180, arc.sweep(), 1e-9);
    assertEquals(10, arc.radius());
    assertTrue(arc.middle().y() < 0);
  }

  @Test
  void goesOnTangent() {
    Line line = Continuation.line(A, 30, 10);
    assertEquals(10, line.length(), 1e-12);
    Arc arc = Continuation.arc(line, 5, Side.RIGHT, 30);
    assertEquals(0, arc.tangentAt(1).y(), 1e-12);
    assertEquals(5, Continuation.arc(A, 0, 5, Side.LEFT, 90).end().x(), 1e-12);
    assertEquals(A, Continuation.arc(A, 0, 5, Side.LEFT, 360).end());
    assertInstanceOf(Line.class, Continuation.to(line, line.pointAt(1).plus(line.tangentAt(1))));
    assertEquals(7, Continuation.line(arc, 7).length(), 1e-12);
  }

  @Test
  void refusals() {
    assertEquals(
        "a radius of 9 mm does not span 20 mm; it must be at least 10 mm (13/32 in)",
        refusal(() -> ArcBy.chordAndRadius(A, new Point(20, 0), 9, Side.LEFT, false)));
    assertEquals(
        "the three points of the arc lie in a straight row; move one aside or draw a line",
        refusal(() -> ArcBy.throughPoint(A, new Point(1, 0), new Point(2, 0))));
    refusal(() -> ArcBy.throughPoint(A, A, new Point(2, 0)));
    refusal(() -> ArcBy.throughPoint(A, new Point(2, 0), A));
    refusal(() -> ArcBy.chordAndRise(A, A, 3, Side.LEFT));
    refusal(() -> ArcBy.chordAndRise(A, new Point(2, 0), 0, Side.LEFT));
    refusal(() -> Continuation.to(A, new Point(1, 0), new Point(-3, 0)));
    refusal(() -> Continuation.line(A, 0, -1));
    refusal(() -> CircleSegment.ofRadiusAndRise(3, 7));
  }

  private static String refusal(Runnable wrong) {
    return assertThrows(Problem.class, wrong::run).getMessage();
  }
}
