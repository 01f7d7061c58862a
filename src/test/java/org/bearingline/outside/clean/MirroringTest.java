package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Near-symmetric outlines become their own mirror image, radii and all. */
class MirroringTest {

  private static CleanedOutline clean(Sketch sketch, CenterLine line) {
    return Cleaning.clean(sketch, CleaningSettings.usual().withSymmetry(line));
  }

  /** The rail's left half and its mirror image: two lifts, upper corners sharp. */
  private static Loop twoLifts() {
    List<Primitive> half = Sketches.rail().primitives().subList(1, 5);
    Similarity mirror = Similarity.mirror(new Point(300, 0), new Point(300, 1));
    List<Primitive> all = new ArrayList<>();
    all.add(Sketches.line(8, 0, 592, 0));
    all.addAll(half);
    Primitive level = Sketches.rail().primitives().get(5);
    all.add(level);
    Point from = level.end();
    all.add(Sketches.line(from.x(), from.y(), 600 - from.x(), from.y()));
    all.add(level.transformed(mirror).reversed());
    for (int i = 3; i >= 0; i--) {
      all.add(half.get(i).transformed(mirror).reversed());
    }
    return new Loop(all);
  }

  private static void assertMirrored(Loop loop, double middle, boolean upright) {
    Point a = upright ? new Point(middle, 0) : new Point(0, middle);
    Point b = upright ? new Point(middle, 1) : new Point(1, middle);
    Similarity mirror = Similarity.mirror(a, b);
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 5; i++) {
        assertTrue(loop.distanceTo(mirror.apply(piece.pointAt(i / 4.0))) < 1e-9);
      }
      if (piece instanceof Arc arc) {
        assertTrue(
            loop.primitives().stream()
                .anyMatch(
                    p ->
                        p instanceof Arc other
                            && other.radius() == arc.radius()
                            && other.center().distanceTo(mirror.apply(arc.center())) < 1e-9));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aNoisyRailBecomesItsOwnImage(long seed) {
    List<Point> trace = Sketches.traced(twoLifts(), 6000, 0.05, seed);
    CleanedOutline cleaned = clean(Sketches.noisy(trace, 0.075), CenterLine.VERTICAL);
    assertEquals(List.of(), cleaned.report().faults());
    Loop loop = cleaned.outlines().get(0).outer();
    assertEquals(12, loop.size());
    Bounds box = loop.bounds();
    assertMirrored(loop, box.center().x(), true);
    assertTrue(cleaned.report().symmetryMove().getAsDouble() < 0.1);
    for (Point p : trace) {
      assertTrue(loop.distanceTo(p) < 0.12);
    }
  }

  @Test
  void aSkewBoardWithTwoHolesIsAveraged() {
    Loop edge =
        Loop.polygon(
            List.of(new Point(0, 0), new Point(200, 0.2), new Point(180, 90), new Point(20.4, 90)));
    Loop left = Loop.of(Arc.circle(new Point(50, 40), 10));
    Loop right = Loop.of(Arc.circle(new Point(150.2, 40.4), 10.2));
    CleanedOutline cleaned =
        clean(
            Sketches.of(
                Sketches.loops("edge", FillRule.EVEN_ODD, edge),
                Sketches.loops("left", FillRule.EVEN_ODD, left),
                Sketches.loops("right", FillRule.EVEN_ODD, right)),
            CenterLine.VERTICAL);
    Outline outline = cleaned.outlines().get(0);
    assertEquals(4, outline.outer().size());
    assertMirrored(outline.outer(), 100, true);
    assertEquals(10.1, ((Arc) outline.openings().get(0).primitives().get(0)).radius(), 1e-12);
    assertEquals(10.1, ((Arc) outline.openings().get(1).primitives().get(0)).radius(), 1e-12);
    // Half the larger difference: 0.4 mm in the upper left corner, or in the holes.
    assertTrue(cleaned.report().symmetryMove().getAsDouble() < 0.25);
  }

  @Test
  void aLyingOvalIsAlikeAboveAndBelow() {
    CleanedOutline cleaned =
        clean(
            Sketches.closed(
                List.of(
                    Sketches.bezier(100, 0.05, 100, 40, 60, 60, 0, 60),
                    Sketches.bezier(0, 60, -60, 60, -100, 40, -100, 0),
                    Sketches.bezier(-100, 0, -100, -40, -60, -60.1, 0, -60.1),
                    Sketches.bezier(0, -60.1, 60, -60.1, 100, -40, 100, 0.05))),
            CenterLine.HORIZONTAL);
    assertEquals(List.of(), cleaned.report().faults());
    Loop loop = cleaned.outlines().get(0).outer();
    assertMirrored(loop, loop.bounds().center().y(), false);
  }

  @Test
  void aHoleWithoutPartnerIsRefused() {
    Problem refused =
        assertThrows(
            Problem.class,
            () ->
                clean(
                    Sketches.of(
                        Sketches.loops(
                            "edge", FillRule.EVEN_ODD, Loop.rectangle(new Bounds(0, 0, 100, 50))),
                        Sketches.loops(
                            "hole", FillRule.EVEN_ODD, Loop.of(Arc.circle(new Point(20, 20), 5)))),
                    CenterLine.VERTICAL));
    assertTrue(refused.getMessage().contains("no partner"));
  }
}
