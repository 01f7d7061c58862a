package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drawing approximated is found again: circles, straights, arcs, tangents. */
class CleaningTest {

  private static CleanedOutline clean(Sketch sketch) {
    return Cleaning.clean(sketch, CleaningSettings.usual());
  }

  private static Loop only(CleanedOutline cleaned) {
    assertEquals(List.of(), cleaned.report().faults());
    assertEquals(1, cleaned.outlines().size());
    return cleaned.outlines().get(0).outer();
  }

  @ParameterizedTest
  @CsvSource({"5,64", "50,64", "300,64", "50,128", "300,128", "50,1000", "1000,1000"})
  void circleOfChordsIsOneCircle(double radius, int chords) {
    CleanedOutline cleaned =
        clean(Sketches.polygon(Sketches.circle(new Point(100, 50), radius, chords)));
    Arc circle = (Arc) only(cleaned).primitives().get(0);
    assertTrue(circle.isFullCircle());
    assertBelow(1e-9 * radius, Math.abs(circle.radius() - radius));
    // Closed formula: a chord of a regular n-gon stands r (1 − cos(π/n)) inside its circle.
    double rise = radius * (1 - Math.cos(Math.PI / chords));
    assertBelow(1e-9 * radius, Math.abs(cleaned.report().largestMove() - rise));
    // What goes beyond the tolerance is told with its reason.
    String told =
        String.format(
            Locale.ROOT, "by up to %.3f mm, as the curve did", Math.ceil(rise * 1e3) / 1e3);
    assertEquals(rise > 0.02, cleaned.report().notes().toString().contains(told));
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 50, 300})
  void circleOfFourBeziersIsOneCircle(double r) {
    double k = 0.5522847498 * r;
    CleanedOutline cleaned =
        clean(
            Sketches.closed(
                List.of(
                    Sketches.bezier(r, 0, r, k, k, r, 0, r),
                    Sketches.bezier(0, r, -k, r, -r, k, -r, 0),
                    Sketches.bezier(-r, 0, -r, -k, -k, -r, 0, -r),
                    Sketches.bezier(0, -r, k, -r, r, -k, r, 0))));
    Arc circle = (Arc) only(cleaned).primitives().get(0);
    assertTrue(circle.isFullCircle());
    assertBelow(1e-9 * r, Math.abs(circle.radius() - r));
    // The usual cubic leaves its circle by 2.73e-4 r (closed form at t = 1/2 ± √3/6 … 0.2110).
    assertBetween(2.6e-4 * r, 2.8e-4 * r, cleaned.report().largestMove());
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 6, 8, 12, 24})
  void polygonStaysWhatItIs(int sides) {
    CleanedOutline cleaned = clean(Sketches.polygon(Sketches.circle(Point.ORIGIN, 200, sides)));
    assertEquals(sides, cleaned.report().lines());
    assertEquals(0, cleaned.report().arcs());
    assertBelow(1e-9, cleaned.report().largestMove());
  }

  @Test
  void exactLinesAndArcsComeBackAsTheyAre() {
    CleanedOutline cleaned = clean(Sketches.closed(Sketches.plain(Sketches.rail())));
    assertEquals(Set.copyOf(Sketches.rail().primitives()), Set.copyOf(only(cleaned).primitives()));
    assertBelow(1e-9, cleaned.report().largestMove());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0005, 0.005, 0.04})
  void choppedRailGivesItsRadiiBack(double rise) {
    Loop loop = only(clean(Sketches.polygon(Sketches.chopped(Sketches.rail(), rise))));
    assertEquals(9, loop.size());
    double[] radii = radii(loop).stream().mapToDouble(Double::doubleValue).toArray();
    assertArrayEquals(new double[] {8, 8, 20, 30}, radii, 1e-6);
    assertTangentWhereSmooth(loop, 2);
  }

  @ParameterizedTest
  @ValueSource(ints = {2_000, 20_000, 200_000})
  void noisyTraceGivesLinesAndRadiiBack(int points) {
    List<Point> trace = Sketches.traced(Sketches.rail(), points, 0.05, points);
    CleanedOutline cleaned = clean(Sketches.noisy(trace, 0.075));
    Loop loop = only(cleaned);
    assertEquals(9, loop.size());
    List<Double> radii = radii(loop);
    assertBetween(7.8, 8.2, radii.get(0));
    assertBetween(7.8, 8.2, radii.get(1));
    assertBetween(19.3, 20.7, radii.get(2));
    assertBetween(29.0, 31.0, radii.get(3));
    assertTangentWhereSmooth(loop, 2);
    for (Point p : trace) {
      assertBelow(0.1, loop.distanceTo(p));
    }
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 16; i++) {
        assertBelow(0.06, Sketches.rail().distanceTo(piece.pointAt(i / 16.0)));
      }
    }
  }

  @Test
  void ellipseKeepsItsAreaAndItsLine() {
    EllipseArc ellipse = EllipseArc.whole(Point.ORIGIN, 300, 150);
    CleanedOutline cleaned = clean(Sketches.closed(List.of(new StrokePiece.Free(ellipse))));
    Loop loop = only(cleaned);
    // π a b; the line may stray by the tolerance over its whole length.
    assertBelow(0.02 * loop.length(), Math.abs(loop.signedArea() - Math.PI * 300 * 150));
    for (int i = 0; i < 5000; i++) {
      assertBelow(0.02, loop.distanceTo(ellipse.pointAt(i / 5000.0)));
    }
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 20; i++) {
        Point p = piece.pointAt(i / 20.0);
        double level = Math.hypot(p.x() / 300, p.y() / 150) - 1;
        double slope = Math.hypot(p.x() / 90_000, p.y() / 22_500);
        assertBelow(0.0205, Math.abs(level / slope));
      }
    }
    assertTangentWhereSmooth(loop, 0);
  }

  @Test
  void nearTangentJointsBecomeTangent() {
    Arc arc = Arc.around(new Point(50, 20), 20, -89, 88);
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loose(
                    "lines",
                    Sketches.line(0, 0, arc.start().x(), arc.start().y()),
                    arc,
                    Sketches.line(arc.end().x(), arc.end().y(), 70, 60),
                    Sketches.line(70, 60, 0, 60),
                    Sketches.line(0, 60, 0, 0))));
    Loop loop = only(cleaned);
    assertEquals(5, loop.size());
    assertTangentWhereSmooth(loop, 3);
    assertEquals(2, cleaned.report().jointsMadeTangent());
    assertBetween(0.9, 1.1, cleaned.report().largestJointTurn());
    assertBelow(0.02, cleaned.report().largestMove());
  }

  private static List<Double> radii(Loop loop) {
    return loop.primitives().stream()
        .filter(Arc.class::isInstance)
        .map(p -> ((Arc) p).radius())
        .sorted()
        .toList();
  }

  private static void assertTangentWhereSmooth(Loop loop, int corners) {
    int sharp = 0;
    for (int i = 0; i < loop.size(); i++) {
      Point in = loop.primitives().get(i).tangentAt(1);
      Point out = loop.primitives().get((i + 1) % loop.size()).tangentAt(0);
      double turn = Math.abs(Math.toDegrees(Math.atan2(in.cross(out), in.dot(out))));
      if (turn > 20) {
        sharp++;
      } else {
        assertBelow(1e-4, turn);
      }
    }
    assertEquals(corners, sharp);
  }

  private static void assertBelow(double limit, double actual) {
    assertTrue(actual < limit, actual + " is not below " + limit);
  }

  private static void assertBetween(double low, double high, double actual) {
    assertTrue(actual >= low && actual <= high, actual + " is not in " + low + ".." + high);
  }
}
