package org.bearingline.drawing.sheet;

import org.bearingline.outline.Bounds;

/**
 * Endless columns and rows of overlapping cells, counted to the right and upwards from the cell at
 * the origin. What a page can be trusted to show is a little less than its cell: half a millimetre
 * is kept at the edges, so that a line that runs along one is printed in its full width.
 *
 * @param originX left edge of column 0, mm
 * @param originY lower edge of row 0, mm
 * @param width of a cell, mm
 * @param height of a cell, mm
 * @param overlap of neighbouring cells, mm
 */
record Grid(double originX, double originY, double width, double height, double overlap) {

  /** Kept at each edge of a cell, mm. */
  static final double EDGE = 0.5;

  /** What is nearer than this to an edge stands on it: rounding, not wood. */
  private static final double ON_EDGE = 1e-6;

  double stepX() {
    return width - overlap;
  }

  double stepY() {
    return height - overlap;
  }

  /** Width of what a page shows for sure, mm. */
  double sureWidth() {
    return width - 2 * EDGE;
  }

  double sureHeight() {
    return height - 2 * EDGE;
  }

  Bounds cell(int column, int row) {
    double x = originX + column * stepX();
    double y = originY + row * stepY();
    return new Bounds(x, y, x + width, y + height);
  }

  /** The first column that shows {@code x}. */
  int firstColumn(double x) {
    return first(x - originX - EDGE, sureWidth(), stepX());
  }

  /** The last column that shows {@code x}. */
  int lastColumn(double x) {
    return last(x - originX - EDGE, stepX());
  }

  int firstRow(double y) {
    return first(y - originY - EDGE, sureHeight(), stepY());
  }

  int lastRow(double y) {
    return last(y - originY - EDGE, stepY());
  }

  private static int first(double from, double sure, double step) {
    return (int) Math.ceil((from - sure - ON_EDGE) / step);
  }

  private static int last(double from, double step) {
    return (int) Math.floor((from + ON_EDGE) / step);
  }
}
