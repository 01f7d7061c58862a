package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.Affine;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Filled shapes of a drawing that lie over each other, made clean and united. */
class UnitedShapesTest {

  private static final CleaningSettings UNITED = CleaningSettings.usual().uniting();

  private static Figure figure(String name, Loop... loops) {
    return Sketches.loops(name, FillRule.NON_ZERO, loops);
  }

  private static Loop box(double x, double y, double width, double height) {
    return Loop.rectangle(new Bounds(x, y, x + width, y + height));
  }

  private static Loop disc(double x, double y, double radius) {
    return Loop.of(Arc.circle(new Point(x, y), radius));
  }

  /** A circle as drawing programs write it: four Bézier curves, off by 0.03 % of the radius. */
  private static Figure curves(double x, double y, double r) {
    double k = r * 4 * (Math.sqrt(2) - 1) / 3;
    List<StrokePiece> pieces =
        List.of(
            Sketches.bezier(x + r, y, x + r, y + k, x + k, y + r, x, y + r),
            Sketches.bezier(x, y + r, x - k, y + r, x - r, y + k, x - r, y),
            Sketches.bezier(x - r, y, x - r, y - k, x - k, y - r, x, y - r),
            Sketches.bezier(x, y - r, x + k, y - r, x + r, y - k, x + r, y));
    return new Figure(List.of(new Stroke(pieces, true)), FillRule.NON_ZERO, "curves");
  }

  private static CleanedOutline united(Figure... figures) {
    return Cleaning.clean(Sketches.of(figures), UNITED);
  }

  private static Outline one(CleanedOutline cleaned) {
    assertEquals(List.of(), cleaned.report().faults());
    assertEquals(1, cleaned.outlines().size());
    return cleaned.outlines().get(0);
  }

  /** Pieces, none of them short, and every joint smooth or a corner. */
  private static void assertTidy(Outline outline, int pieces, double size, String what) {
    assertEquals(pieces, outline.size(), what);
    for (Loop loop : outline.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        Primitive piece = loop.primitives().get(i);
        Primitive next = loop.primitives().get((i + 1) % loop.size());
        assertTrue(piece.length() > size / 1000, what + ": a piece of " + piece.length() + " mm");
        double turn = Math.toDegrees(Joints.bend(piece.tangentAt(1), next.tangentAt(0)));
        assertTrue(
            loop.size() == 1 || turn < 1.2e-4 || turn > 10, what + ": turns by " + turn + "°");
      }
    }
  }

  static Stream<Arguments> slips() {
    List<Arguments> all = new ArrayList<>();
    for (double length : new double[] {5, 100, 2000}) {
      for (double turn : new double[] {0, 33.3}) {
        for (double slip :
            new double[] {
              0, 1e-13, 1e-11, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 5e-3, 0.015
            }) {
          all.add(Arguments.of(length, turn, slip));
          all.add(Arguments.of(length, turn, -slip));
        }
      }
    }
    return all.stream();
  }

  /**
   * The round end of a board drawn as a circle over it, its size, its middle or the board's end off
   * by a slip: one smooth end, as if there were none.
   */
  @ParameterizedTest
  @MethodSource("slips")
  void aRoundEndIsSmooth(double length, double turn, double slip) {
    double r = length / 4;
    Similarity map = Similarity.rotation(turn, new Point(3, 7));
    Loop board = box(0, -r, length, 2 * r).transformed(map);
    Figure[][] drawings = {
      {figure("board", board), figure("end", disc(length, 0, r + slip).transformed(map))},
      {figure("board", board), figure("end", disc(length, slip, r).transformed(map))},
      {figure("board", board), figure("end", disc(length + slip, 0, r).transformed(map))},
    };
    double formula = 2 * r * length + Math.PI * r * r / 2;
    for (int i = 0; i < drawings.length; i++) {
      String what = "drawing " + i + ", length " + length + ", slip " + slip;
      CleanedOutline cleaned = united(drawings[i]);
      Outline outline = one(cleaned);
      assertTidy(outline, 4, length, what);
      assertEquals(formula, outline.area(), 2 * Math.abs(slip) * length + 1e-9 * formula, what);
      // A slip that nobody drew on purpose is put right, and told with the largest move.
      double move = cleaned.report().largestMove();
      assertTrue(move <= 0.02 && move <= 2 * Math.abs(slip) + 1e-10 * length, what + move);
      assertEquals(2, cleaned.report().united().orElseThrow().shapes());
      assertEquals(1, cleaned.report().united().orElseThrow().outlines());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 1e-6, 1e-3, 0.01})
  void aBoardWithRoundCornersDrawnOfSixShapesIsEightPieces(double slip) {
    Outline outline =
        one(
            united(
                figure("level", box(0, 10, 100, 30)),
                figure("upright", box(10, 0, 80, 50)),
                figure("a", disc(10, 10, 10 - slip)),
                figure("b", disc(90 + slip / 2, 10, 10)),
                figure("c", disc(90, 40, 10 + slip / 2)),
                figure("d", disc(10, 40 - slip / 2, 10))));
    assertTidy(outline, 8, 100, "slip " + slip);
    assertEquals(5000 - 400 + 100 * Math.PI, outline.area(), 60 * slip + 1e-9);
  }

  @Test
  void circlesThatProgramsWriteAsCurvesAreArcsAndRunIntoTheEdge() {
    CleanedOutline cleaned =
        united(figure("board", box(0, 0, 100, 50)), curves(100, 25, 25), curves(0, 25, 25));
    Outline outline = one(cleaned);
    assertTidy(outline, 4, 100, "slot");
    assertEquals(5000 + 625 * Math.PI, outline.area(), 0.1);
    // What the arc leaves the curve by: of such a curve 0.0273 % of the radius.
    assertEquals(25 * 2.73e-4, cleaned.report().largestMove(), 1e-4);
  }

  @Test
  void edgesThatAreFlushButForASlipAreOneStraight() {
    for (double slip : new double[] {1e-12, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 0.01}) {
      Outline outline =
          one(united(figure("a", box(0, 0, 100, 50)), figure("b", box(80, slip, 70, 30))));
      assertTidy(outline, 6, 100, "slip " + slip);
    }
  }

  @Test
  void whatTouchesInAPointIsToldWithItsPlace() {
    for (double slip : new double[] {0, 1e-12, 1e-10, -1e-12, -1e-9, -1e-6}) {
      CleanedOutline cleaned =
          united(figure("a", disc(0, 0, 20)), figure("b", disc(40 + slip, 0, 20)));
      List<Fault> faults = cleaned.report().faults();
      assertEquals(1, faults.size(), "slip " + slip);
      assertEquals(Fault.Kind.NARROW, faults.get(0).kind());
      assertEquals(0, faults.get(0).at().distanceTo(new Point(20, 0)), 1e-3);
      assertEquals("a and b", faults.get(0).source());
    }
    Fault corner =
        united(figure("a", box(0, 0, 50, 50)), figure("b", box(50, 50, 30, 30)))
            .report()
            .faults()
            .get(0);
    assertEquals(Fault.Kind.NARROW, corner.kind());
    assertEquals(new Point(50, 50), corner.at());
  }

  @Test
  void whatIsApartStaysApartAndIsLeftAsDrawn() {
    CleanedOutline apart = united(figure("a", disc(0, 0, 20)), figure("b", disc(41, 0, 20)));
    assertEquals(2, apart.outlines().size());
    assertFalse(apart.report().united().orElseThrow().isAny());
    Figure[] sound = {figure("a", box(0, 0, 90, 50), disc(20, 20, 5).clockwise())};
    assertEquals(
        Cleaning.clean(Sketches.of(sound), CleaningSettings.usual()).outlines(),
        united(sound).outlines());
  }

  /** Circles of radius 20, 40 apart along x and y: 4 discs on the corners of a square frame. */
  @Test
  void aRingOfShapesHasAnOpening() {
    Outline outline =
        one(
            united(
                figure("a", box(0, 0, 100, 20)),
                figure("b", box(0, 80, 100, 20)),
                figure("c", box(0, 0, 20, 100)),
                figure("d", box(80, 0, 20, 100))));
    assertEquals(1, outline.openings().size());
    assertEquals(10_000 - 3600, outline.area(), 1e-9);
    assertTidy(outline, 8, 100, "frame");
  }

  @Test
  void aShapeDrawnTwiceIsToldAsEver() {
    Figure[] twice = {
      figure("a", box(0, 0, 90, 50)),
      figure("again", box(0, 0, 90, 50)),
      figure("b", disc(90, 50, 10))
    };
    CleanedOutline cleaned = united(twice);
    assertEquals(1, cleaned.report().doubledStrokes());
    assertEquals(2, cleaned.report().united().orElseThrow().shapes());
    assertEquals(4500 + 75 * Math.PI, one(cleaned).area(), 1e-9);
    CleanedOutline alone = united(twice[0], twice[1]);
    assertEquals(1, alone.report().doubledStrokes());
    assertFalse(alone.report().united().orElseThrow().isAny());
  }

  private static Figure unfilled(Figure figure) {
    return new Figure(figure.strokes(), figure.rule(), false, figure.source());
  }

  @Test
  void linesWithoutAFillAreNotUnited() {
    Figure board = figure("board", box(0, 0, 100, 50));
    Figure line = unfilled(figure("line", disc(100, 50, 10)));
    for (CleaningSettings settings : List.of(UNITED, CleaningSettings.usual())) {
      CleanedOutline cleaned = Cleaning.clean(Sketches.of(board, line), settings);
      assertEquals(
          List.of(Fault.Kind.LINES_MEETING, Fault.Kind.LINES_MEETING),
          cleaned.report().faults().stream().map(Fault::kind).toList());
      assertFalse(cleaned.canUnite());
    }
    // Inside what was united it is an opening, wherever the shapes' own edges run.
    Outline holed =
        one(
            united(
                board,
                figure("arm", box(80, 10, 80, 30)),
                unfilled(figure("hole", disc(90, 25, 12)))));
    assertEquals(5000 + 1800 - 144 * Math.PI, holed.area(), 1e-9);
    // With a fill it is a shape as the others, that they cover, and this is told.
    CleanedOutline covered =
        united(board, figure("arm", box(80, 10, 80, 30)), figure("hole", disc(90, 25, 12)));
    assertEquals(6800, one(covered).area(), 1e-9);
    assertTrue(
        covered.report().notes().get(0).startsWith("hole lies under the other shapes"),
        covered.report().notes().toString());
  }

  @Test
  void withoutTheWishTheRefusalNamesIt() {
    CleanedOutline cleaned =
        Cleaning.clean(
            Sketches.of(figure("a", box(0, 0, 100, 50)), figure("b", disc(100, 50, 10))),
            CleaningSettings.usual());
    assertTrue(cleaned.report().united().isEmpty());
    assertTrue(cleaned.canUnite());
    assertTrue(
        cleaned.report().faults().stream().allMatch(f -> f.kind() == Fault.Kind.MEETING),
        cleaned.report().faults().toString());
  }

  /** The union of a drawing that is nearly its own mirror image is made its own mirror image. */
  @Test
  void aUnionIsMadeSymmetric() {
    Figure[] drawn = {
      figure("board", box(0, 0, 100, 20)),
      figure("left", disc(20, 22, 15)),
      figure("right", disc(80.01, 22, 15.006)),
      figure("middle", box(40, 10, 20.01, 30))
    };
    for (CenterLine line : List.of(CenterLine.VERTICAL, CenterLine.HORIZONTAL)) {
      Sketch sketch = Sketches.of(drawn);
      boolean upright = line == CenterLine.VERTICAL;
      Sketch seen =
          upright ? sketch : Sizing.moved(sketch, Similarity.mirror(Point.ORIGIN, new Point(1, 1)));
      CleanedOutline cleaned = Cleaning.clean(seen, UNITED.withSymmetry(line));
      Outline outline = one(cleaned);
      Bounds box = outline.bounds();
      Similarity mirror =
          upright
              ? Similarity.mirror(new Point(box.center().x(), 0), new Point(box.center().x(), 1))
              : Similarity.mirror(new Point(0, box.center().y()), new Point(1, box.center().y()));
      Outline image = outline.transformed(mirror);
      for (Primitive piece : image.outer().primitives()) {
        assertEquals(0, outline.outer().distanceTo(piece.start()), 1e-9);
        assertEquals(0, outline.outer().distanceTo(piece.middle()), 1e-9);
      }
      assertTrue(cleaned.report().symmetryMove().orElseThrow() < 0.02);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "-1, 1", "1, -1", "3, 0.5"})
  void mirroredAndStretchedShapesAreUnited(double across, double up) {
    Affine map = new Affine(across, 0, 0, up, 12, -5);
    Figure plate = stretched(figure("plate", box(0, 0, 80, 40)), map);
    Figure arm =
        stretched(
            figure(
                "arm",
                Loop.polygon(
                    Arrays.asList(new Point(70, 10), new Point(130, 20), new Point(70, 30)))),
            map);
    Outline outline = one(united(plate, arm));
    // Of the triangle of 600 mm² the sixth along its base, 10 of 60 mm, and less each way.
    double in = 600 * (1 - 25.0 / 36);
    assertEquals((3200 + 600 - in) * Math.abs(across * up), outline.area(), 1e-9);
    assertEquals(7, outline.size());
  }

  private static Figure stretched(Figure figure, Affine map) {
    List<StrokePiece> pieces = new ArrayList<>();
    for (StrokePiece piece : figure.strokes().get(0).pieces()) {
      Line line = (Line) ((StrokePiece.Plain) piece).primitive();
      pieces.add(new StrokePiece.Plain(new Line(map.apply(line.start()), map.apply(line.end()))));
    }
    return new Figure(List.of(new Stroke(pieces, true)), figure.rule(), figure.source());
  }

  /**
   * Boxes and circles on a grid of 10 mm, each place off by up to a slip: the union is sound, or it
   * is told where shapes hold together by a point; nothing else stops it.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.05})
  void shapesDrawnByHandOnAGridAreUnitedOrRefusedForAPoint(double slip) {
    Random random = new Random(26);
    int sound = 0;
    for (int i = 0; i < 200; i++) {
      Figure[] figures = new Figure[2 + random.nextInt(5)];
      for (int k = 0; k < figures.length; k++) {
        double[] v = new double[4];
        for (int c = 0; c < 4; c++) {
          v[c] = 10 * random.nextInt(c < 2 ? 8 : 4) + slip * (2 * random.nextDouble() - 1);
        }
        Loop loop =
            random.nextInt(3) == 0
                ? disc(v[0], v[1], 5 + Math.abs(v[2]))
                : box(v[0], v[1], 10 + v[2], 10 + v[3]);
        figures[k] = figure("shape " + k, loop);
      }
      CleanedOutline cleaned = united(figures);
      CleaningReport report = cleaned.report();
      for (Fault fault : report.faults()) {
        assertEquals(Fault.Kind.NARROW, fault.kind(), "drawing " + i);
      }
      assertTrue(report.largestMove() <= 0.025 + 1e-9, "drawing " + i + " " + report.largestMove());
      if (report.faults().isEmpty()) {
        sound++;
        cleaned.outlines().forEach(one -> assertEquals(List.of(), OutlineCheck.faults(one)));
      }
    }
    assertTrue(sound > 100, "sound ones: " + sound);
  }
}
