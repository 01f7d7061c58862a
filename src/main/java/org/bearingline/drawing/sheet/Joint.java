package org.bearingline.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The edge along which one page is trimmed and laid on another. The page underneath keeps a flap as
 * wide as the overlap; the page on top is trimmed at its left or lower edge. Both print the same
 * marks, each its own half.
 *
 * @param under name of the page with the flap: the left one, or the lower one
 * @param over name of the page that is trimmed and laid on it
 * @param upright whether the edge runs along y
 * @param at the edge's x when upright, else its y, in plan coordinates
 * @param marks the joining marks along the edge
 */
public record Joint(String under, String over, boolean upright, double at, List<Mark> marks) {

  /**
   * A joining mark.
   *
   * @param along its middle on the edge: y when upright, else x, in plan coordinates
   * @param depth how far into the flap the name of the page on top is written, mm
   */
  public record Mark(double along, double depth) {}

  /** Distance of marks that one can still align by eye and hand, mm. */
  private static final double SPACING = 180;

  /** Room that a mark and its words want to themselves: a radius in mm. */
  private static final double ROOM = 9;

  private static final int TRIES = 9;

  public Joint {
    marks = List.copyOf(marks);
  }

  /** The middle of a mark. */
  public Point point(Mark mark) {
    return point(upright, at, mark.along, 0);
  }

  private static Point point(boolean upright, double at, double along, double depth) {
    return upright ? new Point(at + depth, along) : new Point(along, at + depth);
  }

  /** All joints of the pages, with their marks as far from lines as the edge allows. */
  static List<Joint> between(List<Sheet> sheets, double overlap, List<Primitive> lines) {
    List<Joint> joints = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Bounds cell = sheet.cell();
      sheet
          .left()
          .map(left -> new Joint(left, sheet.name(), true, cell.minX(), List.of()))
          .map(joint -> joint.marked(cell.minY(), cell.maxY(), overlap, lines))
          .ifPresent(joints::add);
      sheet
          .below()
          .map(below -> new Joint(below, sheet.name(), false, cell.minY(), List.of()))
          .map(joint -> joint.marked(cell.minX(), cell.maxX(), overlap, lines))
          .ifPresent(joints::add);
    }
    return joints;
  }

  /** The joint with its marks between two ends of the edge, clear of the corners' overlap. */
  private Joint marked(double low, double high, double overlap, List<Primitive> lines) {
    double from = low + overlap;
    double length = high - overlap - from;
    int count = Math.max(2, (int) Math.round(length / SPACING));
    List<Primitive> near = near(lines, overlap);
    List<Mark> placed = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double middle = from + (i + 0.5) * length / count;
      placed.add(clearest(middle, length / count, overlap, near));
    }
    return new Joint(under, over, upright, at, placed);
  }

  private List<Primitive> near(List<Primitive> lines, double overlap) {
    double low = at - 2 * ROOM;
    double high = at + Math.max(2 * ROOM, overlap);
    return lines.stream()
        .filter(
            line -> {
              Bounds box = line.bounds();
              return upright
                  ? box.minX() <= high && box.maxX() >= low
                  : box.minY() <= high && box.maxY() >= low;
            })
        .toList();
  }

  /** Of some places about {@code middle}, the first with room for all, else the roomiest. */
  private Mark clearest(double middle, double length, double overlap, List<Primitive> lines) {
    Mark best = null;
    double most = -1;
    for (int i = 0; i < TRIES && most < ROOM; i++) {
      // From the middle of the stretch outwards, to both sides in turn.
      int out = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      double along = middle + out * length / (TRIES + 1);
      double clear = clearance(point(upright, at, along, 0), lines);
      if (clear > most + 1e-9) {
        most = clear;
        best = new Mark(along, depth(along, overlap, lines));
      }
    }
    return best;
  }

  /** The depth in the flap that is farthest from lines, the middle first. */
  private double depth(double along, double overlap, List<Primitive> lines) {
    double best = overlap / 2;
    double most = -1;
    for (double share : new double[] {0.5, 0.3, 0.7}) {
      double clear = clearance(point(upright, at, along, share * overlap), lines);
      if (clear > most + 1e-9) {
        most = clear;
        best = share * overlap;
      }
    }
    return best;
  }

  private static double clearance(Point p, List<Primitive> lines) {
    double clear = 2 * ROOM;
    for (Primitive line : lines) {
      clear = Math.min(clear, line.distanceTo(p));
    }
    return clear;
  }
}
