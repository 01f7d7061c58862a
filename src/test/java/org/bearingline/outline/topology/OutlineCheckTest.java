package org.bearingline.outline.topology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.junit.jupiter.api.Test;

class OutlineCheckTest {

  private static final Loop BOARD = Loop.rectangle(new Bounds(0, 0, 100, 60));

  private static String first(Outline outline) {
    return OutlineCheck.firstFault(outline).orElseThrow().sentence();
  }

  @Test
  void soundOutlinesHaveNoFault() {
    Loop halfDisc =
        Loop.of(
            Arc.around(new Point(50, 30), 10, 0, 180),
            new Line(new Point(40, 30), new Point(60, 30)));
    assertTrue(OutlineCheck.faults(Outline.of(BOARD, halfDisc)).isEmpty());
    assertTrue(OutlineCheck.faults(Outline.of(Loop.of(Arc.circle(new Point(3, 4), 5)))).isEmpty());
  }

  @Test
  void aBowTieCrossesItselfInItsMiddle() {
    Loop bow =
        Loop.polygon(
            List.of(new Point(0, 0), new Point(10, 10), new Point(10, 0), new Point(0, 12)));
    assertEquals("the outline meets itself at x 5.455, y 5.455 mm", first(Outline.of(bow)));
  }

  @Test
  void aPinchedOutlineMeetsItselfInACorner() {
    Loop pinched =
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(10, 0),
                new Point(5, 5),
                new Point(10, 10),
                new Point(0, 10),
                new Point(5, 5)));
    assertEquals("the outline meets itself at x 5.000, y 5.000 mm", first(Outline.of(pinched)));
  }

  @Test
  void anEdgeThatRunsBackIsFound() {
    Loop spike =
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(10, 0),
                new Point(10, 10),
                new Point(15, 10),
                new Point(5, 10),
                new Point(0, 10)));
    assertTrue(OutlineCheck.firstFault(Outline.of(spike)).isPresent());
  }

  @Test
  void openingsMustLieInsideAndApart() {
    assertTrue(
        first(Outline.of(BOARD, Loop.rectangle(new Bounds(90, 10, 110, 20))))
            .startsWith("an opening meets the outer edge"));
    assertTrue(
        first(Outline.of(BOARD, Loop.rectangle(new Bounds(200, 10, 210, 20))))
            .startsWith("an opening lies outside the outer edge"));
    assertTrue(
        first(
                Outline.of(
                    BOARD,
                    Loop.rectangle(new Bounds(10, 10, 50, 50)),
                    Loop.rectangle(new Bounds(20, 20, 30, 30))))
            .startsWith("an opening lies inside another"));
  }

  @Test
  void looseLoopsNestByDepth() {
    Region nested =
        Nesting.region(
            List.of(
                Loop.rectangle(new Bounds(20, 20, 30, 30)),
                Loop.rectangle(new Bounds(10, 10, 50, 50)),
                BOARD));
    assertEquals(2, nested.pieces().size());
    assertEquals(6000 - 1600 + 100, nested.area(), 1e-9);
  }
}
