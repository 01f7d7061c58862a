package org.bearingline.drawing.sheet;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What stands where on a page, in true mm from its lower left corner, as it is read. True means as
 * it measures on the printed paper: {@link #scaleX()} and {@link #scaleY()} lead from true mm to
 * the mm of the file. Nothing but the drawing and its joining marks stands in the cell.
 *
 * @param width of the page in the file, mm
 * @param height of the page in the file, mm
 * @param scaleX mm of the file for a true mm, along the page's x
 * @param scaleY mm of the file for a true mm, along the page's y
 * @param turned whether the page is read with the paper's longer side across
 * @param cell where the drawing shows
 * @param side the strip to its left, for the bar along y
 * @param bar the band below both, for the bar along x and the page's name
 * @param map below the band to the left, for the page map
 * @param text below the band to the right, for words and legend
 */
public record PageFrame(
    double width,
    double height,
    double scaleX,
    double scaleY,
    boolean turned,
    Bounds cell,
    Bounds side,
    Bounds bar,
    Bounds map,
    Bounds text) {

  /** The longest of the scale bars, 4 inches, in mm. */
  public static final double LONGEST_BAR = 101.6;

  private static final double SIDE_WIDTH = 12;
  private static final double BAR_HEIGHT = 12.5;
  private static final double MAP_WIDTH = 44;
  private static final double GAP = 2;

  /** Past this, lines of text are too long to be read with ease. */
  private static final double WIDEST_TEXT = 250;

  /**
   * @param length of the paper in mm, for a roll as long as is cut off
   */
  static PageFrame of(PaperChoice choice, double length, boolean turned, FootText words) {
    Paper paper = choice.paper();
    double width = turned ? length : paper.width();
    double height = turned ? paper.width() : length;
    PrintCorrection printed = choice.correction();
    double printsX = (turned ? printed.y() : printed.x()) / 100;
    double printsY = (turned ? printed.x() : printed.y()) / 100;
    // A printer that enlarges pushes the rim out of the paper, so only a smaller print moves edges.
    double trueWidth = width * Math.min(1, printsX);
    double trueHeight = height * Math.min(1, printsY);
    // Read across, the paper's foot is at the left or the right, as the printer's driver turns it.
    double atSides = turned ? choice.margins().foot() : choice.margins().side();
    double atFoot = turned ? choice.margins().side() : choice.margins().foot();
    double left = atSides;
    double right = trueWidth - atSides;
    double top = trueHeight - choice.margins().side();
    double low = atFoot;
    double textLeft = left + MAP_WIDTH + GAP;
    double textWidth = Math.min(right - textLeft, WIDEST_TEXT);
    refuseNarrow(choice, right - left, textWidth);
    double textTop = low + words.height(textWidth);
    double cellLow = textTop + GAP + BAR_HEIGHT;
    double cellLeft = left + SIDE_WIDTH;
    refuseLow(choice, top - cellLow);
    return new PageFrame(
        width,
        height,
        1 / printsX,
        1 / printsY,
        turned,
        new Bounds(cellLeft, cellLow, right, top),
        new Bounds(left, cellLow, cellLeft, top),
        new Bounds(left, textTop + GAP, right, cellLow),
        new Bounds(left, low, left + MAP_WIDTH, textTop),
        new Bounds(textLeft, low, textLeft + textWidth, textTop));
  }

  private static void refuseNarrow(PaperChoice choice, double inner, double textWidth) {
    if (inner < SIDE_WIDTH + LONGEST_BAR + 4 || textWidth < 60) {
      throw tooSmall(choice);
    }
  }

  private static void refuseLow(PaperChoice choice, double cell) {
    if (cell < Math.max(LONGEST_BAR + 8, 3 * choice.overlap())) {
      throw tooSmall(choice);
    }
  }

  private static Problem tooSmall(PaperChoice choice) {
    return new Problem(
        Place.option(choice.margins().equals(Margins.usual()) ? "--paper" : "--margin"),
        "the paper “"
            + choice.paper().name()
            + "” is too small: within the printer's margins it must hold two bars of 100 mm, the"
            + " page's legend and some of the drawing; take A4, Letter or larger, or smaller"
            + " margins");
  }

  /** The point of the page, in true mm, where a point of {@code sheet}'s cell is printed. */
  public Point onPage(Sheet sheet, Point planned) {
    return new Point(
        planned.x() - sheet.cell().minX() + cell.minX(),
        planned.y() - sheet.cell().minY() + cell.minY());
  }
}
