package org.bearingline.export.pdf;

import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.PageFrame;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Similarity;

/** Writes the full-size pages of a drawing. */
public final class SheetsPdf {

  /** Smallest words of the drawing itself, mm of the em: about 7 points. */
  private static final double LEAST_TEXT = 2.5;

  private SheetsPdf() {}

  /**
   * The file's bytes. Lines are within 0.001 mm of the drawing; what the printer makes of them is
   * measured on the two bars of every page.
   *
   * @param units of the dimensions' words
   */
  public static byte[] write(Drawing drawing, SheetPlan plan, Units units) {
    try (PdfFile file = new PdfFile(drawing.title())) {
      WasteMarks waste = new WasteMarks(drawing);
      PageMap map = new PageMap(plan, drawing);
      for (Sheet sheet : plan.sheets()) {
        page(file, drawing, plan, sheet, waste, map, units);
      }
      return file.bytes();
    }
  }

  private static void page(
      PdfFile file,
      Drawing drawing,
      SheetPlan plan,
      Sheet sheet,
      WasteMarks waste,
      PageMap map,
      Units units) {
    PageFrame frame = plan.frame();
    Bounds cell = frame.cell();
    Similarity toPage =
        plan.placement()
            .then(
                Similarity.translation(
                    cell.minX() - sheet.cell().minX(), cell.minY() - sheet.cell().minY()));
    try (Canvas canvas =
        new Canvas(file, frame.width(), frame.height(), frame.scaleX(), frame.scaleY())) {
      JointPainter joints = new JointPainter(canvas, plan, sheet);
      joints.flaps();
      canvas.clipped(
          cell,
          () -> {
            waste.draw(canvas, toPage, cell);
            new ItemPainter(canvas, toPage, cell, LEAST_TEXT, units).draw(drawing);
          });
      joints.marks();
      FootPainter foot = new FootPainter(canvas, plan);
      foot.bars();
      map.draw(canvas, sheet);
      foot.draw(drawing, sheet);
    }
  }
}
