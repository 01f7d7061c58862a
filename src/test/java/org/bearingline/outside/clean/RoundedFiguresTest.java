package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Drawings whose figures were rounded by the program that wrote them: what was meant is found
 * again. The shapes are known beforehand by their construction.
 */
class RoundedFiguresTest {

  private static CleanedOutline clean(Sketch sketch) {
    CleanedOutline cleaned = Cleaning.clean(sketch, CleaningSettings.usual());
    assertEquals(List.of(), cleaned.report().faults());
    return cleaned;
  }

  private static Outline only(CleanedOutline cleaned) {
    assertEquals(1, cleaned.outlines().size());
    return cleaned.outlines().get(0);
  }

  private static StrokePiece line(double... v) {
    return new StrokePiece.Plain(Sketches.line(v));
  }

  /** A circle about (x, y) as four cubics of handle × radius. */
  private static List<StrokePiece> four(double x, double y, double r, double handle) {
    double h = handle * r;
    double[][] v = {
      {x + r, y, x + r, y + h, x + h, y + r, x, y + r},
      {x, y + r, x - h, y + r, x - r, y + h, x - r, y},
      {x - r, y, x - r, y - h, x - h, y - r, x, y - r},
      {x, y - r, x + h, y - r, x + r, y - h, x + r, y}
    };
    return Arrays.stream(v).map(Sketches::bezier).toList();
  }

  /** Handles of 0.55 radii, two figures of the 0.5523 that are usual, leave a circle by 0.12 %. */
  @ParameterizedTest
  @CsvSource({"5, 0.55", "10, 0.55", "20, 0.55", "10, 0.5519", "10, 0.5523", "150, 0.55228"})
  void fourCurvesAreOneCircle(double radius, double handle) {
    CleanedOutline cleaned = clean(Sketches.closed(four(50, 60, radius, handle)));
    assertEquals(1, cleaned.report().circles());
    Arc circle = (Arc) only(cleaned).outer().primitives().get(0);
    assertTrue(circle.center().distanceTo(new Point(50, 60)) < 1e-3);
    assertEquals(radius, circle.radius(), 0.0013 * radius);
    // A cubic of the usual handles leaves its arc by 2.7 parts in 10,000 (see the formula there).
    assertTrue(cleaned.report().largestMove() <= Math.max(0.02, 2.8e-4 * radius));
  }

  /** Two and four arcs of a circle, each end rounded to a millionth. */
  @ParameterizedTest
  @CsvSource({"2, 5.171578", "4, 8.333333", "3, 47.123457"})
  void arcsOfOneCircleAreOneCircle(int count, double radius) {
    List<StrokePiece> arcs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point start = rounded(Point.polar(radius, 11 + 360.0 * i / count));
      Point end = rounded(Point.polar(radius, 11 + 360.0 * (i + 1) / count));
      double half = start.distanceTo(end) / 2;
      double sweep = 2 * Math.asin(Math.min(1, half / radius));
      arcs.add(new StrokePiece.Plain(Arc.ofBulge(start, end, Math.tan(sweep / 4))));
    }
    CleanedOutline cleaned = clean(Sketches.closed(arcs));
    assertEquals(1, cleaned.report().circles(), cleaned.report().toString());
  }

  private static Point rounded(Point p) {
    return new Point(Math.rint(p.x() * 1e6) / 1e6, Math.rint(p.y() * 1e6) / 1e6);
  }

  /** A crescent: two arcs, one of them of more than half a turn, drawn as six curves. */
  @Test
  void aCrescentIsTwoArcs() {
    Sketch sketch =
        Sketches.closed(
            List.of(
                Sketches.bezier(51.28, 59.81, 54.52, 55.22, 56.41, 49.63, 56.41, 43.59),
                Sketches.bezier(56.41, 43.59, 56.41, 37.55, 54.52, 31.96, 51.28, 27.37),
                Sketches.bezier(51.28, 27.37, 53.62, 26.27, 56.22, 25.64, 58.97, 25.64),
                Sketches.bezier(58.97, 25.64, 68.89, 25.64, 76.92, 33.67, 76.92, 43.59),
                Sketches.bezier(76.92, 43.59, 76.92, 53.51, 68.89, 61.54, 58.97, 61.54),
                Sketches.bezier(58.97, 61.54, 56.22, 61.54, 53.61, 60.91, 51.28, 59.81)));
    CleanedOutline cleaned = clean(sketch);
    assertEquals(2, cleaned.report().arcs());
    assertEquals(0, cleaned.report().lines());
    assertTrue(cleaned.report().largestMove() < 0.02, cleaned.report().toString());
  }

  /** A door's rounded top whose last curve ends before or past the first one's start. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.05, -0.001, -1e-5, 1e-5, 1e-4, 0.001, 0.01, 0.05})
  void aClosingStraightThatStepsBackIsNoEdge(double past) {
    double start = 50 + past;
    CleanedOutline cleaned =
        clean(
            Sketches.closed(
                List.of(
                    Sketches.bezier(start, 100, 22.386, 100, 0, 77.614, 0, 50),
                    line(0, 50, 0, 0),
                    line(0, 0, 100, 0),
                    line(100, 0, 100, 50),
                    Sketches.bezier(100, 50, 100, 77.614, 77.614, 100, 50, 100),
                    line(50, 100, start, 100))));
    assertEquals(4, cleaned.report().piecesAfter(), cleaned.report().toString());
    assertEquals(5000 + Math.PI * 1250, only(cleaned).area(), 2.5);
  }

  /** Two edges that run past their corner and come back to it. */
  @Test
  void aLoopSmallerThanAGapIsCutOffAndTold() {
    List<Point> corners =
        List.of(
            new Point(0, 0),
            new Point(100.05, 0),
            new Point(100, 0.05),
            new Point(100, -60),
            new Point(0, -60));
    CleanedOutline cleaned = clean(Sketches.polygon(corners));
    assertEquals(6000, only(cleaned).area(), 1e-2);
    assertEquals(1, cleaned.report().notes().size(), cleaned.report().toString());
    String told = cleaned.report().notes().get(0);
    assertTrue(told.contains("crosses itself") && told.contains("cut off"), told);
    assertEquals(0.05, cleaned.report().largestMove(), 0.01);
  }

  /** Figures of three decimals: the curve gives way, not the straights that it meets. */
  @Test
  void straightsStayExactlyWhereTheyAreDrawn() {
    Sketch foot =
        Sketches.closed(
            List.of(
                line(0, 0, 40, 0),
                line(40, 0, 40, 40),
                Sketches.bezier(40, 40, 40.003, 110, 100, 159.998, 170, 160),
                line(170, 160, 185, 160),
                new StrokePiece.Plain(Arc.around(new Point(185, 175), 15, -90, 90)),
                line(200, 175, 200, 200),
                line(200, 200, 0, 200),
                line(0, 200, 0, 0)));
    CleanedOutline cleaned = clean(foot);
    Loop loop = only(cleaned).outer();
    List<Line> lines =
        loop.primitives().stream().filter(p -> p instanceof Line).map(p -> (Line) p).toList();
    assertEquals(6, lines.size());
    for (Line side : lines) {
      double turn = Math.min(Math.abs(side.tangentAt(0).x()), Math.abs(side.tangentAt(0).y()));
      assertEquals(0, turn, 1e-12, side.toString());
    }
    assertTrue(lines.stream().anyMatch(side -> Math.abs(side.start().x() - 40) < 1e-12));
    assertTrue(lines.stream().anyMatch(side -> Math.abs(side.start().y() - 160) < 1e-9));
    Primitive corner =
        loop.primitives().stream()
            .filter(p -> p instanceof Arc arc && arc.radius() < 20)
            .findFirst()
            .orElseThrow();
    assertEquals(15, ((Arc) corner).radius(), 1e-9);
    assertTrue(new Point(185, 175).distanceTo(((Arc) corner).center()) < 1e-9);
    assertTrue(cleaned.report().arcs() <= 5, String.format(Locale.ROOT, "%s", loop));
  }
}
