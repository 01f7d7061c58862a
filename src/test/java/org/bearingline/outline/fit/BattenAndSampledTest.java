package org.bearingline.outline.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;
import org.bearingline.outline.construct.Side;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

class BattenAndSampledTest {

  private static final Point O = Point.ORIGIN;

  /**
   * The natural spline through (1, 2), (2, 3), (3, 5) of Burden and Faires, Numerical Analysis, 9th
   * ed., section 3.5 (from memory): 2 + ¾ x + ¼ x³, then 3 + 3/2 x + ¾ x² − ¼ x³. Heights shrunk so
   * that chord lengths are those of x.
   */
  @Test
  void naturalSplineOfTheTextbook() {
    double flat = 1e-5;
    BattenCurve batten =
        BattenCurve.through(
            List.of(new Point(1, 2 * flat), new Point(2, 3 * flat), new Point(3, 5 * flat)));
    for (double x = 0; x <= 1; x += 0.125) {
      assertEquals(2 + 0.75 * x + 0.25 * x * x * x, batten.pointAt(x / 2).y() / flat, 1e-8);
      assertEquals(
          3 + 1.5 * x + 0.75 * x * x - 0.25 * x * x * x,
          batten.pointAt((1 + x) / 2).y() / flat,
          1e-8);
    }
  }

  @Test
  void bendsThroughItsPointsWithFreeEnds() {
    List<Point> points =
        List.of(O, new Point(100, 30), new Point(200, 10), new Point(300, 60), new Point(420, 50));
    BattenCurve batten = BattenCurve.through(points);
    FittedCurve fitted = FitChecks.smooth(batten, 0.02);
    for (Point point : points) {
      double least =
          fitted.primitives().stream().mapToDouble(p -> p.distanceTo(point)).min().orElseThrow();
      assertTrue(least <= 0.02, "misses " + point + " by " + least);
    }
    assertEquals(0, batten.curvatureAt(0), 1e-12);
    assertEquals(0, batten.curvatureAt(1), 1e-12);
    double knot = 1e-7;
    for (int i = 1; i < 4; i++) {
      double t = parameter(points, i);
      assertEquals(batten.curvatureAt(t - knot), batten.curvatureAt(t + knot), 1e-6);
    }
  }

  private static double parameter(List<Point> points, int index) {
    double sum = 0;
    double at = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i).distanceTo(points.get(i - 1));
      at = i == index ? sum : at;
    }
    return at / sum;
  }

  /** Three points of a quarter circle held to its tangents: a cubic spline errs by order h⁴. */
  @Test
  void heldEndsTakeTheirDirections() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      points.add(Point.polar(100, i * 11.25));
    }
    BattenCurve batten =
        BattenCurve.through(points, Optional.of(new Point(0, 3)), Optional.of(new Point(-7, 0)));
    assertEquals(0, FitChecks.angle(new Point(0, 1), batten.directionAfter(0)), 1e-12);
    assertEquals(0, FitChecks.angle(new Point(-1, 0), batten.directionBefore(1)), 1e-12);
    for (int i = 0; i <= 100; i++) {
      assertEquals(100, batten.pointAt(i / 100.0).norm(), 0.001);
    }
  }

  @Test
  void closedBattenIsSmoothAllRound() {
    BattenCurve heart =
        BattenCurve.closed(
            List.of(
                new Point(0, 40),
                new Point(60, 90),
                new Point(110, 30),
                new Point(0, -100),
                new Point(-110, 30),
                new Point(-60, 90)));
    FittedCurve fitted = FitChecks.smooth(heart, 0.02);
    assertEquals(heart.curvatureAt(0), heart.curvatureAt(1), 1e-9);
    Loop loop = new Loop(fitted.primitives());
    // Mirrored in the y axis, as its points are.
    for (Primitive piece : loop.primitives()) {
      Point m = piece.middle();
      assertTrue(
          loop.primitives().stream()
              .anyMatch(p -> p.middle().distanceTo(new Point(-m.x(), m.y())) < 1e-9));
    }
  }

  @Test
  void battenRefusals() {
    assertEquals(
        "points 2 and 3 of the batten are the same; leave one out",
        assertThrows(
                Problem.class,
                () ->
                    BattenCurve.through(
                        List.of(O, new Point(1, 1), new Point(1, 1), new Point(2, 0))))
            .getMessage());
    assertEquals(
        "a batten needs at least 2 points to bend through, not 1",
        assertThrows(Problem.class, () -> BattenCurve.through(List.of(O))).getMessage());
    assertThrows(Problem.class, () -> BattenCurve.closed(List.of(O, new Point(1, 0))));
    assertEquals(
        List.of(new Line(O, new Point(9, 3))),
        CurveFit.fit(BattenCurve.through(List.of(O, new Point(9, 3)))).primitives());
  }

  /** A chain of known lines and arcs, sampled, comes back as those lines and arcs. */
  @Test
  void sampledLinesAndArcsAreFoundAgain() {
    Line first = Continuation.line(O, 10, 60);
    Arc bend = Continuation.arc(first, 40, Side.LEFT, 100);
    Line last = Continuation.line(bend, 50);
    List<SampledCurve.Sample> samples = new ArrayList<>();
    for (Primitive piece : List.of(first, bend, last)) {
      for (int i = 0; i < 12; i++) {
        samples.add(SampledCurve.Sample.smooth(piece.pointAt(i / 12.0), piece.tangentAt(i / 12.0)));
      }
    }
    samples.add(SampledCurve.Sample.smooth(last.end(), last.tangentAt(1)));
    FittedCurve fitted = CurveFit.fit(SampledCurve.through(samples), 0.001);
    assertEquals(3, fitted.primitives().size(), () -> fitted.primitives().toString());
    assertInstanceOf(Line.class, fitted.primitives().get(0));
    assertEquals(40, ((Arc) fitted.primitives().get(1)).radius(), 1e-6);
    assertInstanceOf(Line.class, fitted.primitives().get(2));
    assertTrue(FitChecks.kink(fitted.primitives()) < 1e-6);
  }

  @Test
  void sampledCornersStay() {
    SampledCurve curve =
        SampledCurve.through(
            List.of(
                SampledCurve.Sample.smooth(O, new Point(1, 0)),
                new SampledCurve.Sample(new Point(50, 0), new Point(1, 0), new Point(0, 1)),
                SampledCurve.Sample.smooth(new Point(50, 30), new Point(0, 1))));
    assertEquals(
        List.of(new Line(O, new Point(50, 0)), new Line(new Point(50, 0), new Point(50, 30))),
        CurveFit.fit(curve).primitives());
  }
}
