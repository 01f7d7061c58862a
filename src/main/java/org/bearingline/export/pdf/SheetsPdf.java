package org.bearingline.export.pdf;

import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.PageFrame;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/** Writes the full-size pages of a drawing. */
public final class SheetsPdf {

  private final SheetPlan plan;
  private final Drawing drawing;
  private final Plot plot;
  private final WasteMarks waste;
  private final PageMap map;

  private SheetsPdf(Drawing drawing, SheetPlan plan, Units units) {
    this.plan = plan;
    this.drawing = drawing;
    this.plot = Plot.of(WholeWords.on(plan, drawing, units), units, Typeface.REGULAR::width);
    this.waste = new WasteMarks(drawing, plot);
    this.map = new PageMap(plan, drawing);
  }

  /**
   * The file's bytes. Lines are within 0.001 mm of the drawing; what the printer makes of them is
   * measured on the two bars of every page.
   *
   * @param drawing the one that the plan was made for
   * @param units of the dimensions' words
   */
  public static byte[] write(Drawing drawing, SheetPlan plan, Units units) {
    try (PdfFile file = new PdfFile(drawing.title())) {
      SheetsPdf pages = new SheetsPdf(drawing, plan, units);
      plan.sheets().forEach(sheet -> pages.page(file, sheet));
      return file.bytes();
    }
  }

  private void page(PdfFile file, Sheet sheet) {
    PageFrame frame = plan.frame();
    Bounds cell = frame.cell();
    Point shift = frame.onPage(sheet, Point.ORIGIN);
    Similarity toPage = plan.placement().then(Similarity.translation(shift.x(), shift.y()));
    try (Canvas canvas =
        new Canvas(file, frame.width(), frame.height(), frame.scaleX(), frame.scaleY())) {
      JointPainter joints = new JointPainter(canvas, plan, sheet);
      joints.flaps();
      canvas.clipped(
          cell,
          () -> {
            waste.draw(canvas, toPage, cell);
            new PlotPainter(canvas, toPage, cell).draw(plot);
          });
      joints.marks();
      map.draw(canvas, sheet);
      FootPainter foot = new FootPainter(canvas, plan);
      foot.bars();
      foot.draw(drawing, sheet);
    }
  }
}
