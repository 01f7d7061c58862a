package org.bearingline.drawing.sheet;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Which cells of a grid must be printed so that every line stands on a page. A stretch of line that
 * only one cell shows asks for that cell; a stretch in an overlap asks for one of its two or four
 * cells, and is given one as late and as seldom as possible.
 *
 * @param grid the cells
 * @param pages those to print
 */
record PageCover(Grid grid, Set<Spot> pages) {

  /** Pieces shorter than this are left over from rounding, mm. */
  private static final double CRUMB = 1e-6;

  private static final Comparator<Spot> READING_ORDER =
      Comparator.comparingInt((Spot spot) -> -spot.row).thenComparingInt(Spot::column);

  /** A cell by its column to the right and its row upwards. */
  record Spot(int column, int row) {}

  /** The cells that show one stretch of line: a block of one, two or four. */
  private record Choice(int firstColumn, int lastColumn, int firstRow, int lastRow) {

    boolean isOne() {
      return firstColumn == lastColumn && firstRow == lastRow;
    }

    boolean isCorner() {
      return firstColumn < lastColumn && firstRow < lastRow;
    }

    boolean isMetBy(Set<Spot> pages) {
      return pages.contains(new Spot(firstColumn, firstRow))
          || pages.contains(new Spot(lastColumn, firstRow))
          || pages.contains(new Spot(firstColumn, lastRow))
          || pages.contains(new Spot(lastColumn, lastRow));
    }

    Set<Spot> spots() {
      Set<Spot> spots = new LinkedHashSet<>();
      for (int row = lastRow; row >= firstRow; row--) {
        for (int column = firstColumn; column <= lastColumn; column++) {
          spots.add(new Spot(column, row));
        }
      }
      return spots;
    }
  }

  /** The cover of {@code lines}, or nothing as soon as it takes {@code tooMany} pages. */
  static Optional<PageCover> of(List<Primitive> lines, Grid grid, int tooMany) {
    Set<Spot> pages = new TreeSet<>(READING_ORDER);
    Set<Choice> open = new LinkedHashSet<>();
    Set<Choice> corners = new LinkedHashSet<>();
    for (Primitive line : lines) {
      double[] cuts = EdgeCuts.of(line, grid);
      for (int i = 1; i < cuts.length; i++) {
        if ((cuts[i] - cuts[i - 1]) * line.length() < CRUMB && cuts.length > 2) {
          continue;
        }
        Choice choice = choice(line.pointAt((cuts[i - 1] + cuts[i]) / 2), grid);
        if (choice.isOne()) {
          pages.add(new Spot(choice.firstColumn, choice.firstRow));
        } else {
          open.add(choice);
          if (choice.isCorner()) {
            corners.add(choice);
          }
        }
      }
      if (pages.size() >= tooMany) {
        return Optional.empty();
      }
    }
    meet(open, pages);
    join(corners, pages);
    return pages.size() < tooMany ? Optional.of(new PageCover(grid, pages)) : Optional.empty();
  }

  private static Choice choice(Point p, Grid grid) {
    return new Choice(
        grid.firstColumn(p.x()), grid.lastColumn(p.x()), grid.firstRow(p.y()), grid.lastRow(p.y()));
  }

  private static void meet(Set<Choice> open, Set<Spot> pages) {
    open.removeIf(choice -> choice.isMetBy(pages));
    while (!open.isEmpty()) {
      Map<Spot, Integer> asked = new HashMap<>();
      open.forEach(choice -> choice.spots().forEach(spot -> asked.merge(spot, 1, Integer::sum)));
      Spot most =
          asked.keySet().stream()
              .min(
                  Comparator.comparing((Spot spot) -> -asked.get(spot))
                      .thenComparing(READING_ORDER))
              .orElseThrow();
      pages.add(most);
      open.removeIf(choice -> choice.isMetBy(pages));
    }
  }

  /**
   * Pages that share a line in no more than a corner cannot be taped together; one of the pages
   * between them is printed too.
   */
  private static void join(Set<Choice> corners, Set<Spot> pages) {
    for (Choice corner : corners) {
      Spot lowLeft = new Spot(corner.firstColumn, corner.firstRow);
      Spot lowRight = new Spot(corner.lastColumn, corner.firstRow);
      Spot highLeft = new Spot(corner.firstColumn, corner.lastRow);
      Spot highRight = new Spot(corner.lastColumn, corner.lastRow);
      boolean rising = pages.contains(lowLeft) && pages.contains(highRight);
      boolean falling = pages.contains(highLeft) && pages.contains(lowRight);
      if (rising && !pages.contains(highLeft) && !pages.contains(lowRight)) {
        pages.add(lowRight);
      } else if (falling && !pages.contains(lowLeft) && !pages.contains(highRight)) {
        pages.add(highRight);
      }
    }
  }

  /** How many edges of pages are to be taped. */
  int joints() {
    int joints = 0;
    for (Spot spot : pages) {
      joints += pages.contains(new Spot(spot.column + 1, spot.row)) ? 1 : 0;
      joints += pages.contains(new Spot(spot.column, spot.row + 1)) ? 1 : 0;
    }
    return joints;
  }
}
