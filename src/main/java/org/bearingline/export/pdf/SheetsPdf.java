package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.length.Units;

/** Writes the full-size pages of a drawing. */
public final class SheetsPdf {

  private SheetsPdf() {}

  /**
   * The file's bytes.
   *
   * @param notes short sentences for the foot of each page, the same that the plan was made with
   * @param units of the dimensions' words
   */
  public static byte[] write(Drawing drawing, SheetPlan plan, List<String> notes, Units units) {
    throw new UnsupportedOperationException();
  }
}
