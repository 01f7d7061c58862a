package org.bearingline.outside.unite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Unions by the formulas of plane geometry, and which shapes belong together. */
class UnitingTest {

  private static final double TOLERANCE = 0.02;

  private static final double NEAR = 0.1;

  static Outline box(double x, double y, double width, double height) {
    return Outline.of(Loop.rectangle(new Bounds(x, y, x + width, y + height)));
  }

  static Outline disc(double x, double y, double radius) {
    return Outline.of(Loop.of(Arc.circle(new Point(x, y), radius)));
  }

  private static Outline ring(double outer, double inner) {
    return Outline.of(disc(0, 0, outer).outer(), disc(0, 0, inner).outer());
  }

  private static United united(Outline... shapes) {
    return Uniting.of(List.of(shapes), TOLERANCE, NEAR);
  }

  private static Region one(Outline... shapes) {
    United united = united(shapes);
    assertEquals(1, united.groups().size());
    assertEquals(List.of(), united.groups().get(0).narrow());
    Region region = united.groups().get(0).region();
    assertEquals(1, region.pieces().size());
    return region;
  }

  /**
   * Circles of radii R and r, d apart, share R² acos((d² + R² − r²) / 2dR) + r² acos((d² + r² − R²)
   * / 2dr) − ½ √((r + R − d)(d + r − R)(d − r + R)(d + r + R)) (E. W. Weisstein, Circle-Circle
   * Intersection, MathWorld).
   */
  @ParameterizedTest
  @ValueSource(doubles = {10.5, 20, 31, 39, 39.99})
  void twoCirclesWithoutTheirLensOnce(double apart) {
    double big = 25;
    double small = 15;
    double lens =
        big * big * Math.acos((apart * apart + big * big - small * small) / (2 * apart * big))
            + small
                * small
                * Math.acos((apart * apart + small * small - big * big) / (2 * apart * small))
            - Math.sqrt(
                    (small + big - apart)
                        * (apart + small - big)
                        * (apart - small + big)
                        * (apart + small + big))
                / 2;
    double formula = Math.PI * (big * big + small * small) - lens;
    Region union = one(disc(0, 0, big), disc(apart, 0, small));
    assertEquals(formula, union.area(), 1e-9 * formula);
    assertEquals(2, union.size());
  }

  /** Of a circle on a corner of a rectangle, three quarters stand out. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 20})
  void aCircleOnTheCornerOfARectangle(double scale) {
    Similarity map =
        Similarity.translation(3, -5)
            .then(Similarity.rotation(17, Point.ORIGIN))
            .then(Similarity.scaling(scale));
    Region union = one(box(0, 0, 100, 60).transformed(map), disc(100, 60, 20).transformed(map));
    double formula = (6000 + 0.75 * Math.PI * 400) * scale * scale;
    assertEquals(formula, union.area(), 1e-11 * formula);
    assertEquals(5, union.size());
  }

  @Test
  void whatLiesInsideOneIsAnOpeningThoughItCrossesAnother() {
    United united =
        united(box(0, 0, 100, 60), disc(100, 60, 20), disc(100, 60, 4), disc(20, 20, 5));
    assertEquals(
        List.of(List.of(0, 1), List.of(2), List.of(3)),
        united.groups().stream().map(United.Group::members).toList());
    assertEquals(
        List.of(false, true, true), united.groups().stream().map(United.Group::isOpening).toList());
    assertEquals(
        Math.PI * 16, united.groups().get(1).region().area(), 1e-11, "the opening as it was drawn");
  }

  /** A keyhole: circle and slot inside a plate are one opening. */
  @Test
  void openingsThatMeetAreUnited() {
    United united = united(box(0, 0, 100, 100), disc(50, 40, 8), box(46, 40, 8, 30));
    assertEquals(2, united.groups().size());
    assertTrue(united.groups().get(1).isOpening());
    // The disc, and of the slot what stands out: less the segment and the rectangle below it.
    double height = Math.sqrt(64 - 16);
    double inDisc = 8 * height + 64 * Math.asin(0.5) - 4 * height;
    double formula = Math.PI * 64 + 8 * 30 - inDisc;
    assertEquals(formula, united.groups().get(1).region().area(), 1e-9);
  }

  @Test
  void aHoleByTheFillRuleStaysWhereNoOtherShapeCoversIt() {
    // Half of the hole lies under the box: half an annulus of radius 30 remains.
    Region union = one(ring(50, 30), box(0, -60, 100, 120));
    assertEquals(1, union.pieces().get(0).openings().size());
    assertEquals(
        Math.PI * 900 / 2, -union.pieces().get(0).openings().get(0).signedArea(), 1e-9, "the rest");
    assertEquals(12000 + Math.PI * (2500 - 900) / 2, union.area(), 1e-8);
    // A disc that covers the hole fills it, and does not change nothing.
    United filled = united(ring(50, 30), disc(0, 0, 35));
    assertEquals(Math.PI * 2500, filled.groups().get(0).region().area(), 1e-9);
    assertEquals(List.of(), filled.groups().get(0).covered());
  }

  @Test
  void aShapeThatOthersCoverIsTold() {
    United united = united(box(0, 0, 100, 50), box(80, 0, 70, 50), disc(90, 25, 12));
    assertEquals(List.of(2), united.groups().get(0).covered());
    assertEquals(4, united.groups().get(0).region().size());
  }

  /** Of two boxes side by side, as far apart as a gap, the strip between becomes wood. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 1e-10, 1e-9, 1e-8, 1e-7, 1e-5, 1e-3, 0.02, 0.099})
  void edgesWithinAGapBecomeOne(double gap) {
    for (double turn : new double[] {0, 30, 200.3}) {
      Similarity map = Similarity.rotation(turn, new Point(7, 9));
      Region union =
          one(box(0, 0, 100, 50).transformed(map), box(100 + gap, 0, 50, 30).transformed(map));
      assertEquals(6500 + 30 * gap, union.area(), 1e-6, "the strip is filled");
      assertEquals(6, union.size(), "gap " + gap + " turned " + turn);
      // Overlapped as far, what is shared counts once.
      Region over =
          one(box(0, 0, 100, 50).transformed(map), box(100 - gap, 0, 50, 30).transformed(map));
      assertEquals(6500 - 30 * gap, over.area(), 1e-6);
      assertEquals(6, over.size(), "overlap " + gap + " turned " + turn);
    }
  }

  @Test
  void shapesFartherApartStayApart() {
    assertEquals(2, united(box(0, 0, 100, 50), box(100.11, 0, 50, 30)).groups().size());
    // Near in one place only.
    assertEquals(2, united(disc(0, 0, 20), disc(40.05, 0, 20)).groups().size());
    assertEquals(2, united(box(0, 0, 50, 50), box(50.03, 50.03, 50, 50)).groups().size());
  }

  @Test
  void anObliqueEdgeRunsOnOverTheGap() {
    Outline left = Outline.of(Loop.polygon(corners(0, 0, 100, 0, 80, 50, 0, 50)));
    Outline right = Outline.of(Loop.polygon(corners(100.05, 0, 160, 0, 160, 50, 80.05, 50)));
    Region union = one(left, right);
    assertEquals(4, union.size());
    assertEquals(8000, union.area(), 1e-9);
  }

  @Test
  void aDiscInAHoleAGapWiderFillsIt() {
    assertEquals(Math.PI * 2500, one(ring(50, 30), disc(0, 0, 29.95)).area(), 1e-9);
    assertEquals(Math.PI * 2500, one(ring(50, 30), disc(0.02, 0, 29.95)).area(), 1e-9);
  }

  private static List<Point> corners(double... v) {
    return IntStream.range(0, v.length / 2)
        .mapToObj(i -> new Point(v[2 * i], v[2 * i + 1]))
        .toList();
  }

  /**
   * Two circles overlapped by h share a chord of about 2 √(r h): the neck they hold together by.
   */
  @Test
  void whatHoldsTogetherByNextToNothingIsTold() {
    for (double overlap : new double[] {1e-9, 1e-6, 1e-4}) {
      United united = united(disc(0, 0, 20), disc(40 - overlap, 0, 20));
      assertEquals(1, united.groups().get(0).narrow().size(), "overlap " + overlap);
      Point at = united.groups().get(0).narrow().get(0);
      assertEquals(0, at.distanceTo(new Point(20, 0)), 1e-3);
    }
    // 2 √(20 · 0.001) is 0.28 mm.
    assertEquals(List.of(), united(disc(0, 0, 20), disc(39.999, 0, 20)).groups().get(0).narrow());
    assertEquals(
        1, united(box(0, 0, 50, 50), box(49.95, 49.95, 50, 50)).groups().get(0).narrow().size());
  }
}
