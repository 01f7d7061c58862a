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
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Cases that are nearly something else, each with the answer that plane geometry gives. */
class MorphologyDegenerateTest {

  private static final Loop BOARD = Loop.rectangle(new Bounds(0, 0, 100, 60));

  private static Region board(Loop... openings) {
    return Region.of(Outline.of(BOARD, openings));
  }

  private static Region exact(OffsetResult result) {
    assertTrue(result.isExact(), () -> result.caution().orElseThrow());
    return result.region();
  }

  @Test
  void nothingStaysNothing() {
    assertTrue(Morphology.dilate(Region.EMPTY, 3).region().isEmpty());
  }

  @Test
  void radiusZeroChangesNothing() {
    assertEquals(board(), Morphology.close(board(), 0).region());
  }

  @Test
  void negativeOrInfiniteRadiusIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Morphology.dilate(board(), -1));
    assertThrows(
        IllegalArgumentException.class, () -> Morphology.erode(board(), Double.POSITIVE_INFINITY));
  }

  @Test
  void offsetOfHalfTheWidthOrMoreLeavesNothing() {
    assertTrue(exact(Morphology.erode(board(), 30)).isEmpty());
    assertTrue(exact(Morphology.erode(board(), 1000)).isEmpty());
    assertTrue(exact(Morphology.open(board(), 31)).isEmpty());
  }

  @Test
  void slotExactlyAsWideAsTheDiscCloses() {
    Region slotted = board(Loop.rectangle(new Bounds(20, 20, 80, 32)));
    Region closed = exact(Morphology.close(slotted, 6));
    assertEquals(6000, closed.area(), 1e-9);
    assertEquals(4, closed.size());
  }

  @Test
  void slotAThousandthWiderStaysWithRoundedCorners() {
    Region slotted = board(Loop.rectangle(new Bounds(20, 20, 80, 32.002)));
    Region closed = exact(Morphology.close(slotted, 6));
    // Four corners of 90° keep r²(1 − π/4) each.
    double slot = 60 * 12.002 - 36 * (4 - Math.PI);
    assertEquals(6000 - slot, closed.area(), 1e-9);
  }

  @Test
  void holeOfTheDiscsOwnRadiusCloses() {
    Region drilled = board(Loop.of(Arc.circle(new Point(50, 30), 6)));
    assertEquals(6000, exact(Morphology.close(drilled, 6)).area(), 1e-9);
  }

  @Test
  void fullCircleGrowsAndShrinksConcentrically() {
    Region disc = Region.of(Outline.of(Loop.of(Arc.circle(new Point(7, -3), 10))));
    Region grown = exact(Morphology.dilate(disc, 2.5));
    assertEquals(1, grown.size());
    Arc circle = (Arc) grown.loops().get(0).primitives().get(0);
    assertEquals(12.5, circle.radius());
    assertEquals(new Point(7, -3), circle.center());
    assertTrue(exact(Morphology.erode(disc, 10)).isEmpty());
    assertEquals(Math.PI * 1e-6, exact(Morphology.erode(disc, 9.999)).area(), 1e-12);
  }

  @Test
  void filletOfTheDiscsOwnRadiusSurvivesClosing() {
    Loop notch =
        new Loop(
            List.of(
                new Line(new Point(0, 0), new Point(100, 0)),
                new Line(new Point(100, 0), new Point(100, 30)),
                new Line(new Point(100, 30), new Point(56, 30)),
                new Arc(new Point(56, 36), 6, new Point(56, 30), new Point(50, 36), -90),
                new Line(new Point(50, 36), new Point(50, 60)),
                new Line(new Point(50, 60), new Point(0, 60)),
                new Line(new Point(0, 60), new Point(0, 0))));
    Region part = Region.of(Outline.of(notch));
    Region closed = exact(Morphology.close(part, 6));
    assertEquals(part.area(), closed.area(), 1e-9);
    assertEquals(part.size(), closed.size());
  }

  @Test
  void neckPinchesIntoTwoPieces() {
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
    Region shrunk = exact(Morphology.erode(dumbbell, 6));
    assertEquals(2, shrunk.pieces().size());
    // Two 28 mm squares, each with a lens towards the neck: the disc's centre comes nearer between
    // the corners, 10 mm apart, as far as the circles of 6 mm about them allow.
    double half = Math.asin(5.0 / 6);
    double lens = 6 * 10 - 36 * half - 5 * Math.sqrt(11);
    assertEquals(2 * (28 * 28 + lens), shrunk.area(), 1e-9);
  }

  @Test
  void openingsMergeAndLandsVanish() {
    Region twoHoles =
        board(
            Loop.of(Arc.circle(new Point(40, 30), 10)), Loop.of(Arc.circle(new Point(62, 30), 10)));
    assertEquals(2, exact(Morphology.erode(twoHoles, 2)).loops().size());
  }

  @Test
  void tinyPiecesDoNoHarm() {
    Loop tiny =
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 1e-6),
                new Point(100 - 1e-6, 60),
                new Point(50, 60),
                new Point(50, 60 - 1e-6),
                new Point(0, 60)));
    Region part = Region.of(Outline.of(tiny));
    assertEquals(part.area(), exact(Morphology.open(part, 3)).area() + 9 * (4 - Math.PI), 1e-3);
    assertEquals(
        part.area() + 320 * 6 + Math.PI * 36, exact(Morphology.dilate(part, 6)).area(), 1e-3);
  }

  @Test
  void farFromTheOriginTheAreaHolds() {
    Region far = board().transformed(Similarity.translation(3e6, -7e6));
    assertEquals(6000 + 320 * 6 + Math.PI * 36, exact(Morphology.dilate(far, 6)).area(), 1e-4);
  }

  /** By Steiner's formula the offset of a convex outline has the area A + P r + π r². */
  @Test
  void aMillionthOfAMillimetreOnAStraightSide() {
    double half = 15 * Math.sqrt(3) / 2;
    Point start = new Point(-28.520000000000003, 14.506666666666668);
    List<Point> corners =
        List.of(
            start,
            new Point(-36.02, 27.497047723433248),
            new Point(-51.02, 27.497047723433244),
            new Point(-58.52, 14.506666666666668),
            new Point(-54.77000000000001, 8.011476138283378),
            new Point(-54.769999500000004, 8.011475272257973),
            new Point(-51.02000000000001, 1.5162856099000859),
            new Point(-36.01999999999999, 1.5162856099000948));
    Region hexagon = Region.of(Outline.of(Loop.polygon(corners)));
    assertEquals(6 * 15 * half / 2, hexagon.area(), 1e-5);
    double grown = hexagon.area() + 90 + Math.PI;
    assertEquals(grown, exact(Morphology.dilate(hexagon, 1)).area(), 1e-5);
    Region first = exact(Morphology.dilate(hexagon, 0.1));
    assertEquals(grown, exact(Morphology.dilate(first, 0.9)).area(), 1e-5);
  }
}
