package org.bearingline.job;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;

/** A place in the wood of an outline with room about it, for a number in a picture. */
final class RoomyPlace {

  /** Rows and columns of places that are tried. */
  private static final int GRID = 16;

  /** Share of a distance that only computing makes. */
  private static final double ALIKE = 1e-9;

  private RoomyPlace() {}

  /** The middle of its box, or of a grid over it the point that lies further from its edges. */
  static Point in(Outline outline) {
    Bounds box = outline.bounds();
    Point best = box.center();
    double most = room(outline, best);
    for (int row = 1; row < GRID; row++) {
      for (int column = 1; column < GRID; column++) {
        Point p =
            new Point(
                box.minX() + box.width() * column / GRID, box.minY() + box.height() * row / GRID);
        double room = room(outline, p);
        if (room > most + ALIKE * most) {
          most = room;
          best = p;
        }
      }
    }
    return best;
  }

  private static double room(Outline outline, Point p) {
    return outline.contains(p) ? outline.distanceTo(p) : 0;
  }
}
