package org.bearingline.drawing.sheet;

import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Similarity;

/**
 * A drawing laid out on pages. Plan coordinates are the drawing's after {@link #placement()}, still
 * full size in mm.
 *
 * @param choice what it is printed on
 * @param frame what stands where on every page
 * @param text the words at the foot of every page
 * @param placement moves the drawing, with or without a quarter turn, to plan coordinates
 * @param rows of the grid, left-out pages counted
 * @param columns of the grid, left-out pages counted
 * @param sheets the pages to print, row by row from the top, left to right; at least one
 * @param joints where the pages are taped together
 */
public record SheetPlan(
    PaperChoice choice,
    PageFrame frame,
    FootText text,
    Similarity placement,
    int rows,
    int columns,
    List<Sheet> sheets,
    List<Joint> joints) {

  public SheetPlan {
    sheets = List.copyOf(sheets);
    joints = List.copyOf(joints);
  }

  /**
   * The fewest pages over shifts and quarter turns that show every line of the drawing; words and
   * dimensions ask for no page of their own. Fails with a Problem where the paper is too small.
   *
   * @param notes short sentences that {@code SheetsPdf} is to print at the foot of each page
   */
  public static SheetPlan plan(Drawing drawing, PaperChoice choice, List<String> notes) {
    return new SheetPlanner(drawing, choice, notes).plan();
  }

  /** Which of the pages to print it is, from 1. */
  public int number(Sheet sheet) {
    return sheets.stream().map(Sheet::name).toList().indexOf(sheet.name()) + 1;
  }

  /** The page at a place of the grid, if it is printed. */
  public Optional<Sheet> at(int row, int column) {
    return sheets.stream()
        .filter(sheet -> sheet.row() == row && sheet.column() == column)
        .findFirst();
  }
}
