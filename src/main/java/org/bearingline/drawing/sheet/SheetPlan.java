package org.bearingline.drawing.sheet;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Similarity;

/**
 * A drawing laid out on pages. Plan coordinates are the drawing's after {@link #placement()}, still
 * full size in mm.
 *
 * @param choice what it is printed on
 * @param frame what stands where on every page
 * @param placement moves the drawing, with or without a quarter turn, to plan coordinates
 * @param rows of the grid, left-out pages counted
 * @param columns of the grid, left-out pages counted
 * @param sheets the pages to print, row by row from the top, left to right
 */
public record SheetPlan(
    PaperChoice choice,
    PageFrame frame,
    Similarity placement,
    int rows,
    int columns,
    List<Sheet> sheets) {

  public SheetPlan {
    sheets = List.copyOf(sheets);
  }

  /**
   * The fewest pages over shifts and quarter turns that show every line of the drawing; words and
   * dimensions ask for no page of their own. Fails with a Problem where the paper is too small.
   *
   * @param notes the words that {@code SheetsPdf} is to print at the foot of each page
   */
  public static SheetPlan plan(Drawing drawing, PaperChoice choice, List<String> notes) {
    throw new UnsupportedOperationException();
  }
}
