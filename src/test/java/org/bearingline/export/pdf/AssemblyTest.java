package org.bearingline.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.Joint;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PaperChoice;
import org.bearingline.drawing.sheet.PrintCorrection;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lays the printed pages on each other as a maker does and compares them with the whole drawing.
 */
class AssemblyTest {

  private static final int DPI = 200;

  /** Dots by which a line may stand elsewhere: rounding of two rasters. */
  private static final int REACH = 2;

  private record Pages(SheetPlan plan, List<Raster> rasters) {

    static Pages of(Drawing drawing, String paper) {
      PaperChoice choice = PaperChoice.of(Paper.parse(paper), PrintCorrection.NONE);
      SheetPlan plan = SheetPlan.plan(drawing, choice, List.of());
      byte[] pdf = SheetsPdf.write(drawing, plan, Units.MM);
      List<Raster> rasters = new ArrayList<>();
      for (int i = 1; i <= plan.sheets().size(); i++) {
        rasters.add(Raster.of(pdf, i, DPI));
      }
      return new Pages(plan, rasters);
    }

    /** Darkest near a point of the drawing, on the page that lies on top there; 0 off all pages. */
    double darkness(Point drawn, int reach) {
      Point p = plan.placement().apply(drawn);
      int top = -1;
      for (int i = 0; i < plan.sheets().size(); i++) {
        if (plan.sheets().get(i).cell().contains(p) && (top < 0 || isOver(i, top))) {
          top = i;
        }
      }
      if (top < 0) {
        return 0;
      }
      Point onPage = plan.frame().onPage(plan.sheets().get(top), p);
      return rasters.get(top).darkest(onPage.x(), onPage.y(), reach);
    }

    private boolean isOver(int i, int other) {
      Sheet a = plan.sheets().get(i);
      Sheet b = plan.sheets().get(other);
      return a.column() > b.column() || a.column() == b.column() && a.row() < b.row();
    }

    boolean isNearAMark(Point drawn) {
      Point p = plan.placement().apply(drawn);
      for (Joint joint : plan.joints()) {
        if (Math.abs((joint.upright() ? p.x() : p.y()) - joint.at()) < 0.6) {
          return true;
        }
        if (joint.marks().stream().anyMatch(m -> joint.point(m).distanceTo(p) < 14)) {
          return true;
        }
      }
      return false;
    }
  }

  @ParameterizedTest
  @CsvSource({"700, 150, A4", "500, 420, Letter"})
  void assembledPagesMatchTheWhole(double length, double height, String paper) {
    Drawing drawing = SampleDrawings.withoutDimensions(SampleDrawings.rail(length, height));
    Pages pages = Pages.of(drawing, paper);
    Pages whole = Pages.of(drawing, "1300mmx1300mm");
    assertTrue(pages.rasters().size() > 1);
    assertEquals(1, whole.rasters().size());
    Bounds box = drawing.bounds();
    int lines = 0;
    int missing = 0;
    int surplus = 0;
    for (double x = box.minX() - 3; x < box.maxX() + 3; x += 0.25) {
      for (double y = box.minY() - 3; y < box.maxY() + 3; y += 0.25) {
        Point p = new Point(x, y);
        if (whole.darkness(p, 0) > 0.7) {
          lines++;
          missing += pages.darkness(p, REACH) > 0.5 ? 0 : 1;
        } else if (pages.darkness(p, 0) > 0.7 && !pages.isNearAMark(p)) {
          surplus += whole.darkness(p, REACH) > 0.5 ? 0 : 1;
        }
      }
    }
    assertTrue(lines > 2000, "only " + lines + " dots of lines were compared");
    assertEquals(0, missing, "dots of lines that the pages lack, of " + lines);
    assertEquals(0, surplus, "dots that the whole drawing has not");
  }
}
