package org.bearingline.outline.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines of thousands of pieces and arcs of kilometres of radius, by closed formulas. */
class MorphologyScaleTest {

  private static final int NOTCHES = 1250;

  private static Region exact(OffsetResult result) {
    assertTrue(result.isExact(), () -> result.caution().orElseThrow());
    return result.region();
  }

  /** A strip 20 high with 1,250 notches 4 wide and 5 deep in its upper edge: 5,004 lines. */
  private static Region comb() {
    List<Point> corners = new ArrayList<>();
    corners.add(new Point(0, 0));
    corners.add(new Point(8 * NOTCHES, 0));
    corners.add(new Point(8 * NOTCHES, 20));
    for (int i = NOTCHES - 1; i >= 0; i--) {
      corners.add(new Point(8 * i + 6, 20));
      corners.add(new Point(8 * i + 6, 15));
      corners.add(new Point(8 * i + 2, 15));
      corners.add(new Point(8 * i + 2, 20));
    }
    corners.add(new Point(0, 20));
    return Region.of(Outline.of(Loop.polygon(corners)));
  }

  /** Right angles only: A + L·d, a quarter disc for each outer corner, a square less each inner. */
  @Test
  void fiveThousandPiecesGrowByTheFormula() {
    Region comb = comb();
    assertEquals(4 * NOTCHES + 4, comb.size());
    double length = comb.pieces().get(0).length();
    double corners = (2 * NOTCHES + 4) * Math.PI / 4 - 2 * NOTCHES;
    double area = comb.area() + length + corners;
    assertEquals(area, exact(Morphology.dilate(comb, 1)).area(), 1e-9 * area);
  }

  @Test
  void fiveThousandPiecesCloseAndFill() {
    double rounded = comb().area() + NOTCHES * 2 * (1 - Math.PI / 4);
    assertEquals(rounded, exact(Morphology.close(comb(), 1)).area(), 1e-9 * rounded);
    // A disc of radius 3 looks into each mouth by the segment of its chord of 4.
    double segment = 9 * Math.asin(2.0 / 3) - 2 * Math.sqrt(5);
    Region filled = exact(Morphology.close(comb(), 3));
    assertEquals(4 + 2 * NOTCHES, filled.size());
    assertEquals(8 * NOTCHES * 20 - NOTCHES * segment, filled.area(), 1e-6);
  }

  @Test
  void closingTwiceIsClosingOnce() {
    Region once = exact(Morphology.close(comb(), 1));
    Region twice = exact(Morphology.close(once, 1));
    assertEquals(once.size(), twice.size());
    assertTrue(Overlay.difference(once, twice).isEmpty());
    assertTrue(Overlay.difference(twice, once).isEmpty());
  }

  /** Steiner's formula again, for a board whose upper edge bulges by 50 mm times the figure. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-2, 1e-4, 1e-6, 1e-7, 1e-8, 1e-9, 1e-12})
  void aFlatArcGrowsBySteinersFormula(double bulge) {
    Region board = bulged(bulge);
    Outline grown = exact(Morphology.dilate(board, 6.35)).pieces().get(0);
    double length = board.pieces().get(0).length();
    double area = board.area() + length * 6.35 + Math.PI * 6.35 * 6.35;
    assertEquals(area, grown.area(), 1e-6);
    assertEquals(length + 2 * Math.PI * 6.35, grown.length(), 1e-7);
    assertTrue(grown.size() <= 8);
  }

  private static Region bulged(double bulge) {
    return Region.of(
        Outline.of(
            Loop.of(
                new Line(new Point(0, 0), new Point(100, 0)),
                new Line(new Point(100, 0), new Point(100, 60)),
                Arc.ofBulge(new Point(100, 60), new Point(0, 60), bulge),
                new Line(new Point(0, 60), new Point(0, 0)))));
  }

  /** Corner of 90° between a flat arc, hollow or full, and a straight: leftover r²(1 − π/4). */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, -1e-6, 1e-8, -1e-8})
  void aDiscRoundsTheCornersUnderAFlatArc(double bulge) {
    Region board = bulged(bulge);
    double gone = board.area() - exact(Morphology.open(board, 6.35)).area();
    assertEquals(6.35 * 6.35 * (4 - Math.PI), gone, 1e-3);
  }

  /** A hollow between an edge of 9.7 m radius and an arc of 11 mm, which the disc rounds. */
  @Test
  void aSmallArcMeetsAFlatOne() {
    Point corner = new Point(-37.903115066315216, 4.199784845584906);
    Point low = new Point(-35.71119538744388, -1.5863468270778531);
    Point left = new Point(-71.83889408683055, 22.125111854561364);
    Point down = new Point(-32.7954591447205, -17.77737647086517);
    Region part =
        Region.of(
            Outline.of(
                Loop.of(
                    new Arc(
                        new Point(-4580.037345162359, -8553.768848819154),
                        9688.643377635475,
                        left,
                        corner,
                        -0.22696275975659136),
                    new Arc(
                        new Point(-47.05974559395625, -2.5771978900416874),
                        11.391724084558431,
                        corner,
                        low,
                        -31.515905222160868),
                    new Line(low, down),
                    new Line(down, new Point(20, 40)),
                    new Line(new Point(20, 40), left))));
    Region closed = exact(Morphology.close(part, 9.525));
    assertTrue(Overlay.difference(part, closed).isEmpty());
    assertTrue(closed.area() > part.area());
  }

  /** A crumb of a straight line in a flat inside corner, which the disc may or may not fill. */
  @Test
  void aCrumbInAFlatCornerIsTheSameAtEverySize() {
    Point crumb = new Point(3.4299990371854236, 13.866666396503586);
    Point corner = new Point(3.430000967039817, 13.86666692129188);
    Point left = new Point(-42.82543899059099, 0.8875196371483403);
    Point low = new Point(-4.558440660436574, -13.839191548305797);
    Point below = new Point(16.641740020039506, -11.358024990103315);
    Point tip = new Point(72.33318967378196, 29.00454474753375);
    Region star =
        Region.of(
            Outline.of(
                Loop.of(
                    new Line(crumb, left),
                    new Line(left, low),
                    new Line(low, below),
                    new Arc(
                        new Point(715.687821597275, -917.2852886729117),
                        1144.2769032241752,
                        below,
                        tip,
                        -3.4444385286735524),
                    new Arc(
                        new Point(221.4979667105968, -814.3323685650873),
                        856.4270430480939,
                        tip,
                        corner,
                        4.7209611074441575),
                    new Line(corner, crumb))));
    for (double scale : new double[] {0.01, 1, 10, 100}) {
      OffsetResult closed =
          Morphology.close(star.transformed(Similarity.scaling(scale)), 6.35 * scale);
      assertTrue(closed.isExact(), () -> closed.caution().orElseThrow());
      assertEquals(star.area(), closed.region().area() / (scale * scale), 1e-6);
    }
  }
}
