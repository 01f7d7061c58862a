package org.bearingline.outside.clean;

import org.bearingline.outline.Point;

/** A square of a grid laid over a drawing, so that what is near a place is found at once. */
record Cell(long column, long row) {

  /**
   * The square in which a point lies.
   *
   * @param size mm
   */
  static Cell of(Point p, double size) {
    return new Cell((long) Math.floor(p.x() / size), (long) Math.floor(p.y() / size));
  }

  Cell beside(int columns, int rows) {
    return new Cell(column + columns, row + rows);
  }
}
