package org.bearingline.drawing.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Names the pages of a cover, row letter and column number, and tells each its neighbours. */
final class SheetNames {

  private final Set<PageCover.Spot> pages;
  private final int firstColumn;
  private final int lastColumn;
  private final int firstRow;
  private final int lastRow;

  SheetNames(Set<PageCover.Spot> pages) {
    this.pages = pages;
    this.firstColumn = pages.stream().mapToInt(PageCover.Spot::column).min().orElseThrow();
    this.lastColumn = pages.stream().mapToInt(PageCover.Spot::column).max().orElseThrow();
    this.firstRow = pages.stream().mapToInt(PageCover.Spot::row).min().orElseThrow();
    this.lastRow = pages.stream().mapToInt(PageCover.Spot::row).max().orElseThrow();
  }

  /** The pages in the order of the cover. */
  List<Sheet> sheets(Grid grid) {
    return pages.stream().map(spot -> sheet(spot, grid)).toList();
  }

  int rows() {
    return lastRow - firstRow + 1;
  }

  int columns() {
    return lastColumn - firstColumn + 1;
  }

  private Sheet sheet(PageCover.Spot spot, Grid grid) {
    return new Sheet(
        name(spot),
        lastRow - spot.row(),
        spot.column() - firstColumn,
        grid.cell(spot.column(), spot.row()),
        neighbour(spot, -1, 0),
        neighbour(spot, 1, 0),
        neighbour(spot, 0, 1),
        neighbour(spot, 0, -1));
  }

  private Optional<String> neighbour(PageCover.Spot spot, int columns, int rows) {
    PageCover.Spot beside = new PageCover.Spot(spot.column() + columns, spot.row() + rows);
    return pages.contains(beside) ? Optional.of(name(beside)) : Optional.empty();
  }

  private String name(PageCover.Spot spot) {
    return letters(lastRow - spot.row()) + (spot.column() - firstColumn + 1);
  }

  /** A to Z, then AA, AB and on. */
  private static String letters(int row) {
    String last = String.valueOf((char) ('A' + row % 26));
    return row < 26 ? last : letters(row / 26 - 1) + last;
  }
}
