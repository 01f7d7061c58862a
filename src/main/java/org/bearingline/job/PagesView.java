package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * How full-size sheets fall on a drawing, in its screen coordinates.
 *
 * @param paper its name
 * @param words how many pages there are
 * @param rows of the grid, left-out pages counted
 * @param columns of the grid, left-out pages counted
 * @param turned whether the pages are read with their longer side across
 * @param overlap mm that neighbours share
 * @param pages those that are printed
 */
public record PagesView(
    String paper,
    String words,
    int rows,
    int columns,
    boolean turned,
    double overlap,
    List<PageView> pages) {

  /** What one page shows. */
  public record PageView(String name, double x, double y, double width, double height) {}

  /**
   * @param toDrawing from the plan's coordinates to the drawing's
   */
  static PagesView of(SheetPlan plan, Similarity toDrawing) {
    List<PageView> pages = new ArrayList<>();
    for (Sheet sheet : plan.sheets()) {
      Bounds cell = sheet.cell();
      ScreenDrawing.Box box =
          ScreenDrawing.Box.of(
              Bounds.of(
                  toDrawing.apply(new Point(cell.minX(), cell.minY())),
                  toDrawing.apply(new Point(cell.maxX(), cell.maxY()))));
      pages.add(new PageView(sheet.name(), box.x(), box.y(), box.width(), box.height()));
    }
    return new PagesView(
        plan.choice().paper().name(),
        words(plan),
        plan.rows(),
        plan.columns(),
        plan.frame().turned(),
        plan.choice().overlap(),
        pages);
  }

  private static String words(SheetPlan plan) {
    int count = plan.sheets().size();
    if (count == 1) {
      return "1 page of " + plan.choice().paper().name();
    }
    String rows = plan.rows() == 1 ? "1 row" : plan.rows() + " rows";
    String left = plan.rows() * plan.columns() > count ? ", empty pages left out" : "";
    return count
        + " pages of "
        + plan.choice().paper().name()
        + " in "
        + rows
        + " of "
        + plan.columns()
        + left;
  }
}
