package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/** The closed loops of a region as edges in a grid of cells, for quick exact distances. */
public final class Edges {

  /** One edge and its neighbours in the loop, by number. */
  record Place(Edge edge, int before, int after) {}

  private final List<Place> places;
  private final double size;
  private final double x0;
  private final double y0;
  private final int columns;
  private final int rows;
  private final int[][] cells;

  private Edges(List<Place> places) {
    this.places = List.copyOf(places);
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (Place place : places) {
      lowX = Math.min(lowX, place.edge.minX());
      lowY = Math.min(lowY, place.edge.minY());
      highX = Math.max(highX, place.edge.maxX());
      highY = Math.max(highY, place.edge.maxY());
    }
    if (places.isEmpty()) {
      lowX = lowY = highX = highY = 0;
    }
    double side = Math.max(Math.max(highX - lowX, highY - lowY), 1e-9);
    this.size = side / Math.max(1, Math.sqrt(places.size()) * 2);
    this.x0 = lowX;
    this.y0 = lowY;
    this.columns = (int) ((highX - lowX) / size) + 1;
    this.rows = (int) ((highY - lowY) / size) + 1;
    this.cells = filled();
  }

  public static Edges of(Region region) {
    return ofLoops(region.loops().stream().map(Edges::edges).toList());
  }

  private static List<Edge> edges(Loop loop) {
    List<Edge> edges = new ArrayList<>(loop.size());
    for (Primitive primitive : loop.primitives()) {
      edges.add(Edge.of(primitive));
    }
    return edges;
  }

  static Edges ofLoops(List<List<Edge>> loops) {
    List<Place> places = new ArrayList<>();
    for (List<Edge> loop : loops) {
      int base = places.size();
      int n = loop.size();
      for (int i = 0; i < n; i++) {
        places.add(new Place(loop.get(i), base + (i + n - 1) % n, base + (i + 1) % n));
      }
    }
    return new Edges(places);
  }

  private int[][] filled() {
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < columns * rows; i++) {
      lists.add(new ArrayList<>(2));
    }
    for (int i = 0; i < places.size(); i++) {
      Edge e = places.get(i).edge;
      double half = size * 0.7072;
      for (int row = row(e.minY()); row <= row(e.maxY()); row++) {
        for (int column = column(e.minX()); column <= column(e.maxX()); column++) {
          double mx = x0 + (column + 0.5) * size;
          double my = y0 + (row + 0.5) * size;
          if (e.distance(mx, my) <= half) {
            lists.get(row * columns + column).add(i);
          }
        }
      }
    }
    return lists.stream()
        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - x0) / size)));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - y0) / size)));
  }

  public int count() {
    return places.size();
  }

  Place place(int number) {
    return places.get(number);
  }

  public double length() {
    return places.stream().mapToDouble(place -> place.edge.length()).sum();
  }

  /** Exact distance from (x, y) to the nearest edge; infinite where there is none. */
  double distance(double x, double y) {
    return distanceExcept(x, y, -1, -1, -1);
  }

  /** The same without the edges of the given numbers. */
  double distanceExcept(double x, double y, int one, int two, int three) {
    if (places.size() == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double best = Double.POSITIVE_INFINITY;
    int homeColumn = (int) Math.floor((x - x0) / size);
    int homeRow = (int) Math.floor((y - y0) / size);
    int last =
        Math.max(
            Math.max(Math.abs(homeColumn), Math.abs(homeColumn - columns)),
            Math.max(Math.abs(homeRow), Math.abs(homeRow - rows)));
    // Cells of ring k + 1 and beyond lie at least k cells away.
    for (int k = ring(homeColumn, homeRow); k <= last && best > (k - 1) * size; k++) {
      for (int row = Math.max(0, homeRow - k); row <= Math.min(rows - 1, homeRow + k); row++) {
        boolean whole = Math.abs(row - homeRow) == k;
        int step = whole || k == 0 ? 1 : 2 * k;
        for (int column = homeColumn - k; column <= homeColumn + k; column += step) {
          if (column < 0 || column >= columns) {
            continue;
          }
          for (int i : cells[row * columns + column]) {
            if (i != one && i != two && i != three) {
              best = Math.min(best, places.get(i).edge.distance(x, y));
            }
          }
        }
      }
    }
    return best;
  }

  // The first ring about a home cell that reaches the grid.
  private int ring(int column, int row) {
    int outX = Math.max(Math.max(-column, column - columns + 1), 0);
    int outY = Math.max(Math.max(-row, row - rows + 1), 0);
    return Math.max(outX, outY);
  }

  /** How often the loops wind round (x, y): 1 inside a region, 0 outside. */
  int winding(double x, double y) {
    double angle = 0;
    for (Place place : places) {
      angle += place.edge.angleSeenFrom(x, y);
    }
    return (int) Math.rint(angle / (2 * Math.PI));
  }

  public boolean contains(double x, double y) {
    return winding(x, y) > 0;
  }
}
