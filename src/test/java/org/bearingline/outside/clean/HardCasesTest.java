package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;
import org.bearingline.outline.construct.Side;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Drawings as they come: spikes, lines drawn twice, touching loops, steps as small as the
 * tolerance. Areas are those of the closed formulas, soundness is judged by JTS.
 */
class HardCasesTest {

  private static CleanedOutline clean(Sketch sketch) {
    return Cleaning.clean(sketch, CleaningSettings.usual());
  }

  private static List<Point> points(double... v) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < v.length; i += 2) {
      points.add(new Point(v[i], v[i + 1]));
    }
    return points;
  }

  private static Figure open(String source, double[]... strokes) {
    List<Stroke> all = new ArrayList<>();
    for (double[] stroke : strokes) {
      all.add(new Stroke(List.of(new StrokePiece.Chords(points(stroke))), false));
    }
    return new Figure(all, FillRule.EVEN_ODD, source);
  }

  private static Outline sound(CleanedOutline cleaned) {
    assertEquals(List.of(), cleaned.report().faults());
    assertEquals(1, cleaned.outlines().size());
    Outline outline = cleaned.outlines().get(0);
    GeometryFactory factory = new GeometryFactory();
    LinearRing[] holes =
        outline.openings().stream().map(l -> ring(factory, l)).toArray(LinearRing[]::new);
    assertTrue(
        new IsValidOp(factory.createPolygon(ring(factory, outline.outer()), holes)).isValid());
    return outline;
  }

  private static LinearRing ring(GeometryFactory factory, Loop loop) {
    List<Coordinate> corners = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      int n = piece instanceof Line ? 1 : 32;
      for (int i = 0; i < n; i++) {
        Point p = piece.pointAt((double) i / n);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    corners.add(corners.get(0));
    return factory.createLinearRing(corners.toArray(new Coordinate[0]));
  }

  /** A board of 100 × 60 mm with a spike of 10 mm, drawn in four ways. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 0 50 0 50 -10 50 0 100 0 100 60 0 60",
        "0 0 50 0 50 10 50 0 100 0 100 60 0 60",
        "0 0 110 0 100 0 100 60 0 60",
        "-10 0 0 0 100 0 100 60 0 60 0 0",
        "0 0 50 0 50 -6 50 -10 50 -4 50 0 100 0 100 60 0 60",
        "0 0 50 0 50 -10 50.001 0 100 0 100 60 0 60",
      })
  void aSpikeWithoutWidthIsLeftOutAndTold(String corners) {
    double[] v = List.of(corners.split(" ")).stream().mapToDouble(Double::parseDouble).toArray();
    CleanedOutline cleaned = clean(Sketches.polygon(points(v)));
    assertEquals(6000, sound(cleaned).area(), 1e-6);
    assertEquals(4, cleaned.report().lines());
    String told = cleaned.report().notes().get(0);
    assertTrue(told.contains("there and back") && told.contains("10.0 mm in all"), told);
  }

  @Test
  void anOpeningTiedToItsOutlineByABridgeComesFree() {
    CleanedOutline cleaned =
        clean(
            Sketches.polygon(
                points(
                    0, 0, 50, 0, 50, 20, 40, 20, 40, 40, 60, 40, 60, 20, 50, 20, 50, 0, 100, 0, 100,
                    60, 0, 60)));
    Outline outline = sound(cleaned);
    assertEquals(1, outline.openings().size());
    assertEquals(6000 - 400, outline.area(), 1e-9);
  }

  @Test
  void aStrokeThereAndBackEnclosesNothing() {
    CleanedOutline cleaned =
        clean(Sketches.of(open("pencil", new double[] {0, 0, 100, 0, 100, 60, 100, 0, 0, 0})));
    assertEquals(Fault.Kind.NO_OUTLINE, cleaned.report().faults().get(0).kind());
  }

  @Test
  void aLoopGoneRoundTwiceCountsOnce() {
    CleanedOutline cleaned =
        clean(Sketches.polygon(points(0, 0, 100, 0, 100, 60, 0, 60, 0, 0, 100, 0, 100, 60, 0, 60)));
    assertEquals(6000, sound(cleaned).area(), 1e-9);
    assertEquals(4, cleaned.report().doubledStrokes());
  }

  @ParameterizedTest
  @CsvSource({
    "0 0 50 30 100 0 100 60 50 30 0 60, 50, 30",
    "0 0 100 0 100 60 60 60 50 0 40 60 0 60, 50, 0",
  })
  void aLoopThatTouchesItselfIsToldOnceWithItsPlace(String corners, double x, double y) {
    double[] v = List.of(corners.split(" ")).stream().mapToDouble(Double::parseDouble).toArray();
    CleanedOutline cleaned = clean(Sketches.polygon(points(v)));
    assertEquals(1, cleaned.report().faults().size());
    Fault fault = cleaned.report().faults().get(0);
    assertEquals(Fault.Kind.TOUCHING, fault.kind());
    assertEquals(x, fault.at().x(), 1e-9);
    assertEquals(y, fault.at().y(), 1e-9);
  }

  @Test
  void strokesOfSeveralPiecesDrawnTwiceCountOnce() {
    double[] half = {0, 0, 0, 60, 100, 60, 100, 0};
    double[] back = {100, 0, 100, 60, 0, 60, 0, 0};
    double[] part = {0, 30, 0, 60, 40, 60};
    double[] rest = {100, 0, 50, -10, 0, 0};
    double[] again = {0, 0, 50, -10, 100, 0};
    CleanedOutline cleaned = clean(Sketches.of(open("pencil", half, rest, back, part, again)));
    assertEquals(6000 + 500, sound(cleaned).area(), 1e-9);
    assertEquals(3, cleaned.report().doubledStrokes());
    assertEquals(List.of(), cleaned.report().notes());
  }

  /** Radii that differ are kept apart; a joint that turns a little is made tangent and told. */
  @ParameterizedTest
  @CsvSource({"0.01, 0", "0.1, 0", "1, 0", "0.01, 0.02", "0.1, 0.3", "1, 0.3"})
  void nearlyTangentArcsOfNearlyEqualRadii(double larger, double degrees) {
    Line base = Sketches.line(0, 0, 100, 0);
    Arc first = Continuation.arc(base, 50, Side.LEFT, 90);
    double r = 50 + larger;
    Arc next = Arc.around(first.end().plus(Point.polar(r, 180 + degrees)), r, degrees, 90);
    Line top = new Line(next.end(), new Point(0, next.end().y()));
    List<StrokePiece> pieces = new ArrayList<>();
    for (Primitive piece : List.of(base, first, next, top, new Line(top.end(), base.start()))) {
      pieces.add(new StrokePiece.Plain(piece));
    }
    CleanedOutline cleaned = clean(Sketches.closed(pieces));
    Loop loop = sound(cleaned).outer();
    assertTrue(cleaned.report().largestMove() < 0.02);
    if (degrees == 0) {
      assertEquals(0, cleaned.report().jointsMadeTangent());
      assertTrue(cleaned.report().largestMove() < 1e-9);
      assertTrue(loop.primitives().contains(first) && loop.primitives().contains(next));
    } else {
      assertTrue(cleaned.report().jointsMadeTangent() > 0);
      assertEquals(degrees, cleaned.report().largestJointTurn(), 1e-6);
    }
    for (Primitive piece : loop.primitives()) {
      assertFalse(piece instanceof Arc arc && arc.radius() > 1e6, piece.toString());
    }
  }

  /** A step, and a notch 5 mm wide or deep: kept from just over the tolerance on, told below it. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1})
  void stepsAndNotchesOverTheToleranceAreKept(double small) {
    double h = 60 + small;
    assertEquals(6000 + 50 * small, area(0, 0, 100, 0, 100, 60, 50, 60, 50, h, 0, h), 1e-9);
    double low = 60 - small;
    assertEquals(
        6000 - 5 * small,
        area(0, 0, 100, 0, 100, 60, 55, 60, 55, low, 50, low, 50, 60, 0, 60),
        1e-9);
    double x = 50 + small;
    assertEquals(
        6000 - 5 * small, area(0, 0, 100, 0, 100, 60, x, 60, x, 55, 50, 55, 50, 60, 0, 60), 1e-9);
  }

  private static double area(double... corners) {
    CleanedOutline cleaned = clean(Sketches.polygon(points(corners)));
    assertEquals(0, cleaned.report().largestMove(), 1e-9);
    return sound(cleaned).area();
  }

  @Test
  void aStepBelowTheToleranceIsSmoothedAndTold() {
    CleanedOutline cleaned =
        clean(Sketches.polygon(points(0, 0, 100, 0, 100, 60, 50, 60, 50, 60.01, 0, 60.01)));
    assertEquals(4, cleaned.report().lines());
    // Half the step to either side.
    assertEquals(0.005, cleaned.report().largestMove(), 1e-4);
    assertEquals(6000.5, sound(cleaned).area(), 0.02);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 1", "0.1, 1", "0.101, 0"})
  void gapsUpToTheStatedOneAreClosed(double gap, int closed) {
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loose(
                    "lines",
                    Sketches.line(0, 0, 100 - gap, 0),
                    Sketches.line(100, 0, 100, 60),
                    Sketches.line(100, 60, 0, 60),
                    Sketches.line(0, 60, 0, 0))));
    assertEquals(closed, cleaned.report().gaps().count());
    assertEquals(2 - 2 * closed, cleaned.report().faults().size());
  }

  @Test
  void aLoopOverItsMiddleLineFourTimesIsRefusedWithThePlaces() {
    Sketch snake =
        Sketches.polygon(points(0, 0, 100, 0, 100, 20, 20, 20, 20, 40, 100, 40, 100, 60, 0, 60));
    CleaningSettings alike = CleaningSettings.usual().withSymmetry(CenterLine.VERTICAL);
    String said = assertThrows(Problem.class, () -> Cleaning.clean(snake, alike)).getMessage();
    for (double y : new double[] {0, 20, 40, 60}) {
      assertTrue(said.contains("x 50.000, y %.3f mm".formatted(y)), said);
    }
  }

  /** The upright middle of a W whose strokes waver over the line at their lowest point. */
  @Test
  void aLineThatWaversOnTheMiddleIsMirroredAllTheSame() {
    List<Point> edge =
        points(0, 0, 100, 0, 100, 60, 50.01, 60, 49.99, 60.01, 50.01, 60.02, 0, 60.02);
    CleanedOutline cleaned =
        Cleaning.clean(
            Sketches.polygon(edge), CleaningSettings.usual().withSymmetry(CenterLine.VERTICAL));
    Outline outline = sound(cleaned);
    assertEquals(6001, outline.area(), 1.5);
    assertEquals(50, outline.bounds().center().x(), 1e-9);
  }

  /** A wavering rail of nine lines and arcs: the advice holds, the drawing is left as asked. */
  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.05, 0.1})
  void aWaveringDrawingIsToldATolerance(double noise) {
    Sketch sketch = Sketches.polygon(Sketches.traced(Sketches.rail(), 2000, noise, 5));
    CleaningReport report = clean(sketch).report();
    assertEquals(0.02, report.tolerance());
    String told = report.notes().get(0);
    assertTrue(told.contains("would make 9 lines and arcs of its " + report.piecesAfter()), told);
    String asked = told.replaceAll(".*--tolerance ([0-9.]+)mm.*", "$1");
    CleaningSettings advised = CleaningSettings.usual().withTolerance(Double.parseDouble(asked));
    CleaningReport followed = Cleaning.clean(sketch, advised).report();
    assertEquals(9, followed.piecesAfter());
    assertTrue(Double.parseDouble(asked) < 3 * noise, told);
  }

  @Test
  void anExactDrawingIsNotSaidToWaver() {
    List<Point> teeth = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      teeth.add(new Point(5 * i, i % 2 == 0 ? 0 : 4));
    }
    teeth.add(new Point(400, 60));
    teeth.add(new Point(0, 60));
    assertEquals(List.of(), clean(Sketches.polygon(teeth)).report().notes());
    List<Point> chopped = Sketches.chopped(Sketches.rail(), 0.0005);
    assertEquals(List.of(), clean(Sketches.polygon(chopped)).report().notes());
  }
}
