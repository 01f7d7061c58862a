package org.bearingline.drawing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.pdf.SampleDrawings;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetPlanTest {

  private static SheetPlan plan(Drawing drawing, String paper) {
    PaperChoice choice = PaperChoice.of(Paper.parse(paper), PrintCorrection.NONE);
    return SheetPlan.plan(drawing, choice, List.of("A note."));
  }

  private static String names(SheetPlan plan) {
    return plan.sheets().stream().map(Sheet::name).collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource({"A4", "Letter", "Legal", "A3", "Tabloid", "A0", "ANSI E", "roll:24in", "roll:914mm"})
  void aSmallPartTakesOnePage(String paper) {
    SheetPlan plan = plan(SampleDrawings.rail(40, 20), paper);
    assertEquals("A1", names(plan));
    assertTrue(plan.joints().isEmpty());
  }

  @Test
  void aLineAsLongAsThePageAllowsStaysOnOnePage() {
    Bounds cell = plan(SampleDrawings.of(line(0, 0, 50, 0)), "A4").frame().cell();
    double most = cell.width() - 2 * Grid.EDGE;
    assertEquals(1, plan(SampleDrawings.of(line(0, 0, most, 0)), "A4").sheets().size());
  }

  @Test
  void turningTheDrawingSavesPages() {
    // Along the paper's longer side the line needs one page, across it two.
    SheetPlan plan = plan(SampleDrawings.of(line(0, 0, 230, 0)), "A4");
    assertEquals(1, plan.sheets().size());
  }

  @Test
  void pagesInsideARingAreLeftOut() {
    SheetPlan plan = plan(SampleDrawings.ring(500, 480), "A4");
    int all = plan.rows() * plan.columns();
    assertTrue(plan.sheets().size() < all, "of " + all + " pages some are empty");
    Point center = plan.placement().apply(Point.ORIGIN);
    assertTrue(plan.sheets().stream().noneMatch(sheet -> sheet.cell().contains(center)));
  }

  @Test
  void everyPageHasALineOfItsOwnOrJoinsTwo() {
    for (Drawing drawing : List.of(SampleDrawings.ring(500, 480), SampleDrawings.rail(1500, 500))) {
      SheetPlan plan = plan(drawing, "A4");
      for (Sheet sheet : plan.sheets()) {
        boolean touched =
            Samples.of(drawing, plan.placement(), 0.5).stream()
                .anyMatch(p -> sheet.cell().contains(p));
        assertTrue(touched, sheet.name() + " is empty");
      }
    }
  }

  @Test
  void rowsAreLetteredFromTheTopAndColumnsNumberedFromTheLeft() {
    SheetPlan plan = plan(SampleDrawings.rail(700, 500), "A4");
    for (Sheet sheet : plan.sheets()) {
      String name = (char) ('A' + sheet.row()) + String.valueOf(sheet.column() + 1);
      assertEquals(name, sheet.name());
    }
    Sheet first = plan.at(0, 0).orElseThrow();
    Sheet below = plan.at(1, 0).orElseThrow();
    assertTrue(first.cell().minY() > below.cell().minY());
    assertEquals("B1", first.below().orElseThrow());
    assertEquals("A1", below.above().orElseThrow());
  }

  @Test
  void neighboursShareTheOverlap() {
    PaperChoice choice = PaperChoice.of(Paper.parse("A4"), PrintCorrection.NONE).withOverlap(15);
    SheetPlan plan = SheetPlan.plan(SampleDrawings.rail(900, 500), choice, List.of());
    for (Sheet sheet : plan.sheets()) {
      plan.at(sheet.row(), sheet.column() + 1)
          .ifPresent(right -> assertEquals(15, sheet.cell().maxX() - right.cell().minX(), 1e-9));
    }
  }

  @Test
  void pagesThatMeetInACornerGetOneBetweenThem() {
    // A diagonal through the corners would otherwise leave pages that cannot be taped.
    SheetPlan plan = plan(SampleDrawings.of(line(0, 0, 700, 800)), "A4");
    for (Sheet sheet : plan.sheets()) {
      boolean joined =
          sheet.left().isPresent()
              || sheet.right().isPresent()
              || sheet.above().isPresent()
              || sheet.below().isPresent();
      assertTrue(joined, sheet.name() + " hangs by a corner");
    }
  }

  @Test
  void bothPagesOfAJointKnowItsMarks() {
    SheetPlan plan = plan(SampleDrawings.rail(900, 500), "A4");
    for (Joint joint : plan.joints()) {
      Sheet under = named(plan, joint.under());
      Sheet over = named(plan, joint.over());
      assertTrue(joint.marks().size() >= 2);
      for (Joint.Mark mark : joint.marks()) {
        assertTrue(under.cell().contains(joint.point(mark)));
        assertTrue(over.cell().contains(joint.point(mark)));
      }
    }
  }

  private static Sheet named(SheetPlan plan, String name) {
    return plan.sheets().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aRollIsCutToTheDrawing() {
    SheetPlan plan = plan(SampleDrawings.rail(3000, 190), "roll:24in");
    assertEquals(1, plan.sheets().size());
    double longer = Math.max(plan.frame().width(), plan.frame().height());
    assertTrue(longer > 3060 && longer < 3160, "cut at " + longer);
    assertEquals(609.6, Math.min(plan.frame().width(), plan.frame().height()), 1e-9);
  }

  @Test
  void aDrawingLongerThanAPdfPageIsSplitOnARoll() {
    SheetPlan plan = plan(SampleDrawings.of(line(0, 0, 9000, 0)), "roll:24in");
    assertEquals(2, plan.sheets().size());
    assertTrue(Math.max(plan.frame().width(), plan.frame().height()) <= 5080);
  }

  @Test
  void aPrinterThatShrinksGetsSmallerCells() {
    Paper paper = Paper.parse("A4");
    Drawing drawing = SampleDrawings.rail(700, 150);
    PaperChoice whole = PaperChoice.of(paper, PrintCorrection.NONE);
    PaperChoice small = PaperChoice.of(paper, new PrintCorrection(95, 98));
    PageFrame usual = SheetPlan.plan(drawing, whole, List.of()).frame();
    PageFrame shrunk = SheetPlan.plan(drawing, small, List.of()).frame();
    assertEquals(usual.turned(), shrunk.turned());
    assertTrue(shrunk.cell().width() < usual.cell().width());
    assertTrue(shrunk.cell().height() < usual.cell().height());
    // What is printed of the corrected file stays within the paper's margins.
    assertTrue(shrunk.cell().maxX() * shrunk.scaleX() <= 210 - 6.35 + 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"60mmx90mm", "100mmx2000mm", "roll:80mm"})
  void paperThatCannotHoldAPageIsRefused(String paper) {
    Problem problem = assertThrows(Problem.class, () -> plan(SampleDrawings.rail(400, 100), paper));
    assertTrue(problem.spoken().contains("too small"), problem::spoken);
  }

  @Test
  void paperSmallerThanItsMarginsIsRefused() {
    PaperChoice choice =
        PaperChoice.of(Paper.parse("A4"), PrintCorrection.NONE).withMargins(Margins.all(120));
    assertThrows(
        Problem.class, () -> SheetPlan.plan(SampleDrawings.rail(400, 100), choice, List.of()));
  }

  /** Every shift of a fine raster, tried without any of the planner's pruning, does no better. */
  @Test
  void bruteForceFindsNoFewerPages() {
    List<Drawing> drawings =
        List.of(
            SampleDrawings.ring(220, 200),
            SampleDrawings.of(line(0, 0, 400, 330)),
            SampleDrawings.of(SampleDrawings.circle(0, 0, 150), SampleDrawings.circle(600, 90, 40)),
            SampleDrawings.of(
                line(0, 0, 500, 0),
                line(0, 400, 500, 400),
                Arc.between(new Point(700, 0), new Point(900, 200), new Point(900, 0), false)));
    for (Drawing drawing : drawings) {
      SheetPlan plan = plan(drawing, "A4");
      int least = BruteForce.fewest(drawing, plan, 5);
      assertTrue(
          plan.sheets().size() <= least,
          drawings.indexOf(drawing) + ": " + plan.sheets().size() + " against " + least);
    }
  }

  private static Line line(double x1, double y1, double x2, double y2) {
    return new Line(new Point(x1, y1), new Point(x2, y2));
  }
}
