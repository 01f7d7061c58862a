package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Strokes become loops, loops become outlines; what cannot is told with its place. */
class DrawnLoopsTest {

  private static CleanedOutline clean(Sketch sketch) {
    return Cleaning.clean(sketch, CleaningSettings.usual());
  }

  private static Loop box(double x, double y, double u, double v) {
    return Loop.rectangle(new Bounds(x, y, u, v));
  }

  private static Loop round(double x, double y, double r) {
    return Loop.of(Arc.circle(new Point(x, y), r));
  }

  @Test
  void looseLinesWithGapsAndDoublesMakeOneRectangle() {
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loose(
                    "layer 0",
                    Sketches.line(100, 0.08, 100, 50),
                    Sketches.line(0, 0, 99.95, 0),
                    Sketches.line(0, 50, 0, 0),
                    Sketches.line(0, 0, 99.95, 0),
                    Sketches.line(20, 50, 60, 50),
                    Sketches.line(100, 50, 0, 50))));
    CleaningReport report = cleaned.report();
    assertEquals(List.of(), report.faults());
    assertEquals(4, report.lines());
    assertEquals(5000, cleaned.outlines().get(0).area(), 1e-6);
    assertEquals(2, report.doubledStrokes());
    assertEquals(1, report.gaps().count());
    assertEquals(Math.hypot(0.05, 0.08), report.gaps().largest(), 1e-9);
    assertEquals(100, report.gaps().places().get(0).x(), 0.1);
  }

  @Test
  void openEndsAreToldWithTheirPlace() {
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loose(
                    "layer 0", Sketches.line(0, 0, 100, 0), Sketches.line(100, 0.5, 100, 50))));
    assertEquals(4, cleaned.report().faults().size());
    Problem problem = assertThrows(Problem.class, cleaned::sound);
    assertTrue(problem.getMessage().contains("x 0.000, y 0.000 mm (layer 0)"));
  }

  @Test
  void aFigureOfEightIsToldWithItsCrossing() {
    CleanedOutline cleaned =
        clean(
            Sketches.polygon(
                List.of(new Point(0, 0), new Point(100, 80), new Point(100, 0), new Point(0, 80))));
    Fault fault = cleaned.report().faults().get(0);
    assertEquals(Fault.Kind.CROSSING, fault.kind());
    assertEquals(50, fault.at().x(), 1e-9);
    assertEquals(40, fault.at().y(), 1e-9);
  }

  @Test
  void outlinesThatShareAnEdgeAreTold() {
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loops("left", FillRule.NON_ZERO, box(0, 0, 50, 40)),
                Sketches.loops("right", FillRule.NON_ZERO, box(50, 0, 90, 40))));
    assertEquals(Fault.Kind.MEETING, cleaned.report().faults().get(0).kind());
    assertTrue(cleaned.report().faults().get(0).source().contains("left and right"));
  }

  @Test
  void aLoopDrawnTwiceCountsOnce() {
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loops("one", FillRule.NON_ZERO, box(0, 0, 50, 40)),
                Sketches.loops("two", FillRule.NON_ZERO, box(0, 0, 50, 40).reversed())));
    assertEquals(List.of(), cleaned.report().faults());
    assertEquals(1, cleaned.report().doubledStrokes());
    assertEquals(2000, cleaned.outlines().get(0).area(), 1e-9);
  }

  /** Against the filling of the Java platform's own two-dimensional paths. */
  @ParameterizedTest
  @EnumSource(FillRule.class)
  void nestingIsThatOfAGeneralFilling(FillRule rule) {
    Random random = new Random(11);
    for (int round = 0; round < 60; round++) {
      List<Loop> loops = new ArrayList<>();
      nest(loops, new Bounds(0, 0, 200, 160), random, 0);
      if (rule == FillRule.NON_ZERO && round % 2 == 0) {
        loops.add(box(100 + random.nextInt(90), 20, 260, 100)); // may overlap others
      }
      CleanedOutline cleaned =
          clean(Sketches.of(Sketches.loops("figure", rule, loops.toArray(new Loop[0]))));
      assertEquals(List.of(), cleaned.report().faults());
      Path2D path = new Path2D.Double(rule == FillRule.NON_ZERO ? 1 : 0);
      loops.forEach(loop -> add(loop, path));
      for (int i = 0; i < 300; i++) {
        Point p = new Point(-5 + 270 * random.nextDouble(), -5 + 170 * random.nextDouble());
        boolean clear = loops.stream().allMatch(loop -> loop.distanceTo(p) > 0.05);
        boolean wood = cleaned.outlines().stream().anyMatch(outline -> outline.contains(p));
        if (clear) {
          assertEquals(path.contains(p.x(), p.y()), wood, "round " + round + " at " + p);
        }
      }
      assertSound(cleaned);
    }
  }

  private static void assertSound(CleanedOutline cleaned) {
    for (Outline outline : cleaned.outlines()) {
      assertTrue(outline.area() > 0);
      assertEquals(List.of(), OutlineCheck.faults(outline));
    }
  }

  private static void nest(List<Loop> loops, Bounds in, Random random, int depth) {
    Loop loop =
        random.nextBoolean()
            ? Loop.rectangle(in)
            : round(in.center().x(), in.center().y(), Math.min(in.width(), in.height()) / 2);
    loops.add(random.nextBoolean() ? loop : loop.reversed());
    if (depth < 3) {
      double w = Math.min(in.width(), in.height()) / 3.2;
      Point c = in.center();
      nest(loops, new Bounds(c.x() - w, c.y() - w, c.x() - 0.3, c.y() + w), random, depth + 1);
      nest(loops, new Bounds(c.x() + 0.3, c.y() - w, c.x() + w, c.y() + w), random, depth + 1);
    }
  }

  private static void add(Loop loop, Path2D path) {
    Point start = loop.primitives().get(0).start();
    path.moveTo(start.x(), start.y());
    for (Primitive piece : loop.primitives()) {
      int n = piece instanceof Line ? 1 : 720;
      for (int i = 1; i <= n; i++) {
        Point p = piece.pointAt((double) i / n);
        path.lineTo(p.x(), p.y());
      }
    }
    path.closePath();
  }

  @Test
  void widthAndHeightMustAgree() {
    Sketch sketch = Sketches.closed(Sketches.plain(box(0, 0, 100, 50)));
    CleaningSettings both =
        CleaningSettings.usual().withSize(OptionalDouble.of(200), OptionalDouble.of(120));
    assertThrows(Problem.class, () -> Cleaning.clean(sketch, both));
    CleaningSettings wide =
        CleaningSettings.usual().withSize(OptionalDouble.of(200), OptionalDouble.empty());
    assertEquals(20_000, Cleaning.clean(sketch, wide).outlines().get(0).area(), 1e-6);
  }

  @Test
  void pointsDrawnTwiceAreDropped() {
    List<Point> corners =
        List.of(
            new Point(0, 0),
            new Point(0, 0),
            new Point(80, 0),
            new Point(80, 0),
            new Point(40, 60));
    CleanedOutline cleaned = clean(Sketches.closed(List.of(new StrokePiece.Chords(corners))));
    assertEquals(3, cleaned.report().lines());
    assertEquals(2, cleaned.report().doubledPoints());
  }
}
