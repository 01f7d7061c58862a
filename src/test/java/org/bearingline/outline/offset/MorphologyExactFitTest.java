package org.bearingline.outline.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/** Discs that fit to the last bit, and edges that touch: areas by plane geometry. */
class MorphologyExactFitTest {

  private static Region exact(OffsetResult result) {
    assertTrue(result.isExact(), () -> result.caution().orElseThrow());
    return result.region();
  }

  /** A board 100 × 60 with a slot 12 wide from above that ends in a half circle at y 30. */
  private static Region slotted() {
    return Region.of(
        Outline.of(
            Loop.of(
                new Line(new Point(0, 0), new Point(100, 0)),
                new Line(new Point(100, 0), new Point(100, 60)),
                new Line(new Point(100, 60), new Point(56, 60)),
                new Line(new Point(56, 60), new Point(56, 30)),
                new Arc(new Point(50, 30), 6, new Point(56, 30), new Point(44, 30), -180),
                new Line(new Point(44, 30), new Point(44, 60)),
                new Line(new Point(44, 60), new Point(0, 60)),
                new Line(new Point(0, 60), new Point(0, 0)))));
  }

  /** Half of the disc looks into the slot's mouth; grown, two quarter discs leave a notch there. */
  @Test
  void aSlotOfTheDiscsOwnWidthFillsUpToItsMouth() {
    double grown = 6000 + 320 * 6 + 36 * Math.PI - (12 * 6 - 18 * Math.PI);
    assertEquals(grown, exact(Morphology.dilate(slotted(), 6)).area(), 1e-9);
    assertEquals(6000 - 18 * Math.PI, exact(Morphology.close(slotted(), 6)).area(), 1e-9);
  }

  @Test
  void aRoundedCornerOfTheDiscsOwnRadiusStays() {
    Region rounded =
        exact(
            Morphology.dilate(Region.of(Outline.of(Loop.rectangle(new Bounds(0, 0, 100, 60)))), 6));
    Region shrunk = exact(Morphology.erode(rounded, 6));
    assertEquals(4, shrunk.size());
    assertEquals(6000, shrunk.area(), 1e-9);
    Region opened = exact(Morphology.open(rounded, 6));
    assertEquals(8, opened.size());
    assertEquals(rounded.area(), opened.area(), 1e-9);
  }

  /** Two squares of 40 mm joined by a neck 10 wide and 20 long. */
  @Test
  void aNeckOfTwiceTheOffsetParts() {
    Region dumbbell =
        Region.of(
            Outline.of(
                Loop.polygon(
                    List.of(
                        new Point(0, 0),
                        new Point(40, 0),
                        new Point(40, 15),
                        new Point(60, 15),
                        new Point(60, 0),
                        new Point(100, 0),
                        new Point(100, 40),
                        new Point(60, 40),
                        new Point(60, 25),
                        new Point(40, 25),
                        new Point(40, 40),
                        new Point(0, 40)))));
    Region shrunk = exact(Morphology.erode(dumbbell, 5));
    assertEquals(2, shrunk.pieces().size());
    // A square of 30 and, towards the neck, 5 by 10 less the half disc round its corners.
    assertEquals(2 * (900 + 50 - 12.5 * Math.PI), shrunk.area(), 1e-9);
    Region opened = exact(Morphology.open(dumbbell, 5));
    assertEquals(2, opened.pieces().size());
    // A square rounded at four corners, and the half disc that looks into the neck.
    assertEquals(2 * (1600 - 25 * (4 - Math.PI) + 12.5 * Math.PI), opened.area(), 1e-9);
  }

  /** Grown, they meet in the one point that is the middle of a circle's travel. */
  @Test
  void discsThatGrowToTouchStayTwo() {
    Point left = new Point(-68.07, 22.689999999999998);
    Point onLeft = new Point(-62.948306286103055, 34.61680399356963);
    Point right = new Point(-52.92588561330011, 57.95585032921437);
    Point onRight = new Point(-47.91467527689864, 69.62537349703675);
    Region discs =
        Region.of(
            Outline.of(Loop.of(new Arc(left, 12.98, onLeft, onLeft, 360))),
            Outline.of(Loop.of(new Arc(right, 12.7, onRight, onRight, 360))));
    Region grown = exact(Morphology.dilate(discs, 6.35));
    assertEquals(2, grown.pieces().size());
    assertEquals(Math.PI * (19.33 * 19.33 + 19.05 * 19.05), grown.area(), 1e-9);
  }

  /** Below and above the middle of a gap of two radii the same distance holds on both sides. */
  @Test
  void boardsTwoRadiiApartGrowTogether() {
    Region boards =
        Region.of(
            Outline.of(Loop.rectangle(new Bounds(0, 0, 40, 30))),
            Outline.of(Loop.rectangle(new Bounds(52, 0, 92, 30))));
    Region grown = exact(Morphology.dilate(boards, 6));
    assertEquals(2 * (1200 + 140 * 6 + 36 * Math.PI), grown.area(), 1e-9);
  }

  /** An island of radius 5 in an opening of radius 20: the gap of 15 fills at half of it. */
  @Test
  void islandsVanishAndGapsFill() {
    Region ringed =
        Region.of(
            Outline.of(
                Loop.rectangle(new Bounds(-50, -30, 50, 30)),
                Loop.of(Arc.circle(Point.ORIGIN, 20).reversed())),
            Outline.of(Loop.of(Arc.circle(Point.ORIGIN, 5))));
    assertEquals(1, exact(Morphology.erode(ringed, 5)).pieces().size());
    assertEquals(2, exact(Morphology.erode(ringed, 4.999)).pieces().size());
    assertEquals(6000, exact(Morphology.close(ringed, 7.5)).area(), 1e-9);
    assertEquals(ringed.area(), exact(Morphology.close(ringed, 7.499)).area(), 1e-9);
  }

  /** Openings of radius 10, 22 apart, grow by 2 into one: two discs of 12 less their lens. */
  @Test
  void openingsMerge() {
    Region drilled =
        Region.of(
            Outline.of(
                Loop.rectangle(new Bounds(0, 0, 100, 60)),
                Loop.of(Arc.circle(new Point(39, 30), 10).reversed()),
                Loop.of(Arc.circle(new Point(61, 30), 10).reversed())));
    Region shrunk = exact(Morphology.erode(drilled, 2));
    assertEquals(1, shrunk.pieces().get(0).openings().size());
    double lens = 2 * 144 * Math.acos(11.0 / 12) - 11 * Math.sqrt(4 * 144 - 22 * 22);
    assertEquals(96 * 56 - 2 * 144 * Math.PI + lens, shrunk.area(), 1e-9);
  }

  @Test
  void theFallBackRefusesAClosingWithABite() {
    Unproven why = new Unproven("a test asks for it", 0, 0, Frame.of(new Bounds(0, 0, 1, 1), 0));
    Region board = Region.of(Outline.of(Loop.rectangle(new Bounds(0, 0, 100, 60))));
    FallBack fallBack = new FallBack(board, 6);
    assertThrows(Problem.class, () -> fallBack.ordered(Morphology.Operation.CLOSE, slotted(), why));
    fallBack.ordered(Morphology.Operation.OPEN, slotted(), why);
  }
}
