package org.bearingline.drawing.sheet;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * Counts pages for every shift of a raster, the drawing upright and turned, from points along its
 * lines: each point stands on one, two or four cells, and every choice among them is tried. Two
 * pages that meet in a corner alone need one more beside them.
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
    Set<Set<Cell>> choices = new LinkedHashSet<>();
    Set<Cell> corners = new HashSet<>();
    for (Point p : points) {
      long column = (long) Math.floor((p.x() - x) / stepX);
      long row = (long) Math.floor((p.y() - y) / stepY);
      boolean sharedX = p.x() - x - column * stepX <= shared;
      boolean sharedY = p.y() - y - row * stepY <= shared;
      if (!sharedX && !sharedY) {
        asked.add(new Cell(column, row));
        continue;
      }
      Set<Cell> choice = new HashSet<>();
      for (long c = sharedX ? column - 1 : column; c <= column; c++) {
        for (long r = sharedY ? row - 1 : row; r <= row; r++) {
          choice.add(new Cell(c, r));
        }
      }
      choices.add(choice);
      if (sharedX && sharedY) {
        corners.add(new Cell(column, row));
      }
    }
    return least(asked, List.copyOf(choices), corners);
  }

  private static int least(Set<Cell> asked, List<Set<Cell>> choices, Set<Cell> corners) {
    for (Set<Cell> choice : choices) {
      if (choice.stream().noneMatch(asked::contains)) {
        int least = Integer.MAX_VALUE;
        for (Cell cell : choice) {
          Set<Cell> more = new HashSet<>(asked);
          more.add(cell);
          least = Math.min(least, least(more, choices, corners));
        }
        return least;
      }
    }
    boolean loose = corners.stream().anyMatch(corner -> isLoose(corner, asked));
    return asked.size() + (loose ? 1 : 0);
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
