package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Point;

/** Numbers places; those nearer to each other than a distance are one. */
final class Places {

  private final double same;
  private final Map<Cell, List<Integer>> cells = new HashMap<>();
  private final List<Point> known = new ArrayList<>();

  Places(double same) {
    this.same = same;
  }

  int number(Point p) {
    Cell own = Cell.of(p, same);
    for (int column = -1; column <= 1; column++) {
      for (int row = -1; row <= 1; row++) {
        for (int i : cells.getOrDefault(own.beside(column, row), List.of())) {
          if (known.get(i).distanceTo(p) <= same) {
            return i;
          }
        }
      }
    }
    known.add(p);
    cells.computeIfAbsent(own, k -> new ArrayList<>()).add(known.size() - 1);
    return known.size() - 1;
  }
}
