package org.bearingline.drawing.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * Counts pages for every shift of a raster, the drawing upright and turned, from points along its
 * lines. A point that only one cell shows asks for that cell; points in overlaps ask for nothing,
 * except that two pages which meet in a corner alone need one more beside them. So the count is
 * never too high: a floor for any plan with the same cells.
 */
final class BruteForce {

  private BruteForce() {}

  private record Cell(long column, long row) {}

  static int fewest(Drawing drawing, SheetPlan plan, double shift) {
    int least = Integer.MAX_VALUE;
    for (boolean turned : new boolean[] {false, true}) {
      PageFrame frame =
          PageFrame.of(
              plan.choice(), plan.choice().paper().height().orElseThrow(), turned, plan.text());
      for (double degrees : new double[] {0, 90}) {
        List<Point> points = Samples.of(drawing, Similarity.rotation(degrees, Point.ORIGIN), 0.5);
        least = Math.min(least, fewest(points, frame.cell(), plan.choice().overlap(), shift));
      }
    }
    return least;
  }

  private static int fewest(List<Point> points, Bounds cell, double overlap, double shift) {
    double stepX = cell.width() - overlap;
    double stepY = cell.height() - overlap;
    // Half a millimetre at each edge of a cell is not trusted to print.
    double shared = overlap - 1;
    int least = Integer.MAX_VALUE;
    for (double x = 0; x < stepX; x += shift) {
      for (double y = 0; y < stepY; y += shift) {
        least = Math.min(least, count(points, x, y, stepX, stepY, shared));
      }
    }
    return least;
  }

  private static int count(
      List<Point> points, double x, double y, double stepX, double stepY, double shared) {
    Set<Cell> asked = new HashSet<>();
    Set<Cell> corners = new HashSet<>();
    for (Point p : points) {
      long column = (long) Math.floor((p.x() - x) / stepX);
      long row = (long) Math.floor((p.y() - y) / stepY);
      boolean sharedX = p.x() - x - column * stepX <= shared;
      boolean sharedY = p.y() - y - row * stepY <= shared;
      if (!sharedX && !sharedY) {
        asked.add(new Cell(column, row));
      } else if (sharedX && sharedY) {
        corners.add(new Cell(column, row));
      }
    }
    boolean loose = corners.stream().anyMatch(corner -> isLoose(corner, asked));
    return Math.max(1, asked.size()) + (loose ? 1 : 0);
  }

  private static boolean isLoose(Cell corner, Set<Cell> asked) {
    boolean highRight = asked.contains(corner);
    boolean highLeft = asked.contains(new Cell(corner.column - 1, corner.row));
    boolean lowRight = asked.contains(new Cell(corner.column, corner.row - 1));
    boolean lowLeft = asked.contains(new Cell(corner.column - 1, corner.row - 1));
    return highRight && lowLeft && !highLeft && !lowRight
        || highLeft && lowRight && !highRight && !lowLeft;
  }
}
