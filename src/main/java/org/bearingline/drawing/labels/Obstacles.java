package org.bearingline.drawing.labels;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Primitive;

/** The lines and boxes that words keep clear of, in a grid of square cells. */
final class Obstacles {

  /** Something that would have to be listed in more cells than this is asked every time. */
  private static final double MANY_CELLS = 4000;

  /** A line, or a box where {@code piece} is null. */
  private record Obstacle(Bounds box, Primitive piece) {
    boolean touches(Bounds other) {
      return box.intersects(other) && (piece == null || Touching.touches(piece, other));
    }
  }

  private final double side;
  private final Map<Long, List<Obstacle>> cells = new HashMap<>();
  private final List<Obstacle> wide = new ArrayList<>();
  private Bounds extent;

  /** With cells of {@code side} mm. */
  Obstacles(double side) {
    this.side = side;
  }

  void add(Primitive piece) {
    add(new Obstacle(piece.bounds(), piece));
  }

  void add(Bounds box) {
    add(new Obstacle(box, null));
  }

  private void add(Obstacle obstacle) {
    Bounds box = obstacle.box();
    extent = extent == null ? box : extent.union(box);
    if ((box.width() / side + 1) * (box.height() / side + 1) > MANY_CELLS) {
      wide.add(obstacle);
      return;
    }
    for (long column = index(box.minX()); column <= index(box.maxX()); column++) {
      for (long row = index(box.minY()); row <= index(box.maxY()); row++) {
        cells.computeIfAbsent(cell(column, row), c -> new ArrayList<>()).add(obstacle);
      }
    }
  }

  /** One number for a cell, since it is asked for more often than anything else. */
  private static long cell(long column, long row) {
    return column << Integer.SIZE ^ row;
  }

  private long index(double at) {
    return (long) Math.floor(at / side);
  }

  /** A box round everything; null while there is nothing. */
  Bounds extent() {
    return extent;
  }

  boolean isClear(Bounds box) {
    if (wide.stream().anyMatch(obstacle -> obstacle.touches(box))) {
      return false;
    }
    for (long column = index(box.minX()); column <= index(box.maxX()); column++) {
      for (long row = index(box.minY()); row <= index(box.maxY()); row++) {
        for (Obstacle obstacle : cells.getOrDefault(cell(column, row), List.of())) {
          if (obstacle.touches(box)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Whether a straight line stays clear by {@code clearance}, tested in short steps. */
  boolean isClear(Line line, double clearance) {
    return blockedSteps(line, clearance) == 0;
  }

  /** How many of a straight line's steps of two clearances come upon something. */
  int blockedSteps(Line line, double clearance) {
    int steps = (int) Math.ceil(line.length() / (2 * clearance));
    int blocked = 0;
    for (int i = 0; i < steps; i++) {
      Line step = new Line(line.pointAt((double) i / steps), line.pointAt((i + 1.0) / steps));
      if (!isClear(step.bounds().grown(clearance / 2))) {
        blocked++;
      }
    }
    return blocked;
  }
}
