package org.bearingline.outline.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundedCornerTest {

  private static final Point CORNER = new Point(50, 20);

  /**
   * Closed formulas of a fillet in a corner of interior angle θ: setback r cot(θ/2), depth r
   * (1/sin(θ/2) − 1), area r² (cot(θ/2) − (π − θ)/2).
   */
  @ParameterizedTest
  @ValueSource(doubles = {30, 45, 60, 90, 108, 120, 135, 150})
  void filletFormulas(double theta) {
    double r = 6;
    Line before = new Line(CORNER.plus(Point.polar(100, 17)), CORNER);
    Line after = new Line(CORNER, CORNER.plus(Point.polar(100, 17 + theta)));
    RoundedCorner corner = RoundedCorner.of(before, after, r);
    double half = Math.toRadians(theta / 2);
    assertEquals(r / Math.tan(half), corner.arc().start().distanceTo(CORNER), 1e-9);
    assertEquals(r * (1 / Math.sin(half) - 1), corner.arc().distanceTo(CORNER), 1e-9);
    Loop cut =
        Loop.of(
            new Line(CORNER, corner.arc().end()),
            corner.arc().reversed(),
            new Line(corner.arc().start(), CORNER));
    double area = r * r * (1 / Math.tan(half) - (Math.PI - Math.toRadians(theta)) / 2);
    assertEquals(area, Math.abs(cut.signedArea()), 1e-9);
    assertEquals(100 * Math.tan(half), RoundedCorner.largestRadius(before, after), 1e-6);
    tangent(corner, before, after, r);
  }

  @Test
  void aWholeSideIsTaken() {
    Line before = new Line(new Point(0, 0), new Point(10, 0));
    Line after = new Line(new Point(10, 0), new Point(10, 30));
    RoundedCorner corner = RoundedCorner.of(before, after, 10);
    assertTrue(corner.before().isEmpty());
    assertEquals(2, corner.primitives().size());
    assertEquals(before.start(), corner.arc().start());
  }

  @Test
  void theLargestRadiusIsNamed() {
    Line before = new Line(new Point(0, 0), new Point(10, 0));
    Line after = new Line(new Point(10, 0), new Point(10, 30));
    Problem problem = assertThrows(Problem.class, () -> RoundedCorner.of(before, after, 12.7));
    assertEquals(
        "a radius of 12.7 mm (1/2 in) does not fit this corner; the largest that does is 10 mm (25/64 in)",
        problem.getMessage());
  }

  /** A straight ending on a round one: centre by Pythagoras, (R + r)² = (r)² + x². */
  @Test
  void lineAndArc() {
    Line before = new Line(new Point(-100, 0), new Point(-30, 0));
    Arc after = Arc.around(Point.ORIGIN, 30, 180, -180);
    RoundedCorner corner = RoundedCorner.of(before, after, 10);
    assertEquals(-Math.sqrt(40 * 40 - 10 * 10), corner.arc().center().x(), 1e-9);
    assertEquals(10, corner.arc().center().y(), 1e-9);
    tangent(corner, before, after, 10);
    // The other way round, and inside the arc.
    RoundedCorner back = RoundedCorner.of(after.reversed(), before.reversed(), 10);
    assertTrue(back.arc().center().distanceTo(corner.arc().center()) < 1e-9);
    Line inward = new Line(new Point(0, 0), new Point(30, 0));
    Arc shell = Arc.around(Point.ORIGIN, 30, 0, 170);
    RoundedCorner inner = RoundedCorner.of(inward, shell, 8);
    assertEquals(Math.sqrt(22 * 22 - 8 * 8), inner.arc().center().x(), 1e-9);
    tangent(inner, inward, shell, 8);
  }

  /** Two circles of radius 25 with centres 40 apart: the rounding's centre is on the axis. */
  @Test
  void arcAndArc() {
    Arc before = Arc.between(new Point(-20, 25), new Point(0, 15), new Point(-20, 0), false);
    Arc after = Arc.between(new Point(0, 15), new Point(20, 25), new Point(20, 0), false);
    RoundedCorner corner = RoundedCorner.of(before, after, 5);
    assertEquals(0, corner.arc().center().x(), 1e-9);
    assertEquals(Math.sqrt(30 * 30 - 20 * 20), corner.arc().center().y(), 1e-9);
    tangent(corner, before, after, 5);
    double largest = RoundedCorner.largestRadius(before, after);
    assertTrue(RoundedCorner.of(before, after, largest).arc().radius() == largest);
    assertThrows(Problem.class, () -> RoundedCorner.of(before, after, largest * 1.001));
  }

  @Property(seed = Seed.FIXED)
  void anyFittingRadiusIsTangent(
      @ForAll @DoubleRange(min = -170, max = 170) double turn,
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double bendBefore,
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double bendAfter,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
    if (Math.abs(turn) < 5) {
      return;
    }
    Point in = Point.polar(1, 20);
    Point out = Point.polar(1, 20 + turn);
    Primitive before = bent(CORNER, in.times(-1), -bendBefore).reversed();
    Primitive after = bent(CORNER, out, bendAfter);
    double radius = share * RoundedCorner.largestRadius(before, after);
    assertTrue(radius > 0);
    tangent(RoundedCorner.of(before, after, radius), before, after, radius);
  }

  @Test
  void smoothAndFoldedNeighboursAreRefused() {
    Line line = new Line(new Point(0, 0), new Point(10, 0));
    assertEquals(
        "there is no corner to round here: the two pieces already run on smoothly",
        assertThrows(Problem.class, () -> RoundedCorner.of(line, Continuation.line(line, 5), 3))
            .getMessage());
    assertThrows(Problem.class, () -> RoundedCorner.of(line, line.reversed(), 3));
    assertThrows(Problem.class, () -> RoundedCorner.of(line, line.reversed(), 0));
  }

  private static Primitive bent(Point start, Point direction, double curvature) {
    if (Math.abs(curvature) < 1e-4) {
      return new Line(start, start.plus(direction.times(40)));
    }
    double sweep = Math.toDegrees(40 * Math.abs(curvature));
    Side side = curvature > 0 ? Side.LEFT : Side.RIGHT;
    return Continuation.arc(start, direction.degrees(), 1 / Math.abs(curvature), side, sweep);
  }

  private static void tangent(
      RoundedCorner corner, Primitive before, Primitive after, double radius) {
    List<Primitive> pieces = corner.primitives();
    assertEquals(radius, corner.arc().radius());
    assertEquals(before.start(), pieces.get(0).start());
    assertEquals(after.end(), pieces.get(pieces.size() - 1).end());
    assertTrue(before.distanceTo(corner.arc().start()) < 1e-9);
    assertTrue(after.distanceTo(corner.arc().end()) < 1e-9);
    for (int i = 1; i < pieces.size(); i++) {
      assertEquals(pieces.get(i - 1).end(), pieces.get(i).start());
      Point in = pieces.get(i - 1).tangentAt(1);
      Point out = pieces.get(i).tangentAt(0);
      assertEquals(0, in.cross(out), 1e-7);
      assertTrue(in.dot(out) > 0);
    }
  }
}
