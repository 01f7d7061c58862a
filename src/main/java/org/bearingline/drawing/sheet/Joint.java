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
 * @param marks places of the joining marks along the edge: y when upright, else x
 */
public record Joint(String under, String over, boolean upright, double at, List<Double> marks) {

  /** Distance of marks that one can still align by eye and hand, mm. */
  private static final double SPACING = 180;

  /** Room that a mark and its words want to themselves: a radius in mm. */
  private static final double ROOM = 9;

  private static final int TRIES = 9;

  public Joint {
    marks = List.copyOf(marks);
  }

  /** The middle of a mark. */
  public Point point(double mark) {
    return upright ? new Point(at, mark) : new Point(mark, at);
  }

  /** All joints of the pages, with their marks as far from lines as the edge allows. */
  static List<Joint> between(List<Sheet> sheets, double overlap, List<Primitive> lines) {
    List<Joint> joints = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Bounds cell = sheet.cell();
      sheet
          .left()
          .ifPresent(
              left -> {
                double from = cell.minY() + overlap;
                double to = cell.maxY() - overlap;
                joints.add(joint(left, sheet.name(), true, cell.minX(), from, to, lines));
              });
      sheet
          .below()
          .ifPresent(
              below -> {
                double from = cell.minX() + overlap;
                double to = cell.maxX() - overlap;
                joints.add(joint(below, sheet.name(), false, cell.minY(), from, to, lines));
              });
    }
    return joints;
  }

  private static Joint joint(
      String under,
      String over,
      boolean upright,
      double at,
      double from,
      double to,
      List<Primitive> lines) {
    int count = Math.max(2, (int) Math.round((to - from) / SPACING));
    double length = (to - from) / count;
    List<Primitive> near = near(upright, at, lines);
    List<Double> marks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      marks.add(clearest(upright, at, from + i * length, length, near));
    }
    return new Joint(under, over, upright, at, marks);
  }

  private static List<Primitive> near(boolean upright, double at, List<Primitive> lines) {
    return lines.stream()
        .filter(
            line -> {
              Bounds box = line.bounds().grown(2 * ROOM);
              return upright
                  ? box.minX() <= at && at <= box.maxX()
                  : box.minY() <= at && at <= box.maxY();
            })
        .toList();
  }

  private static double clearest(
      boolean upright, double at, double from, double length, List<Primitive> lines) {
    double best = from + length / 2;
    double most = -1;
    for (int i = 0; i < TRIES; i++) {
      // From the middle of the stretch outwards, to both sides in turn.
      int out = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      double mark = from + length / 2 + out * length / (TRIES + 1);
      Point middle = upright ? new Point(at, mark) : new Point(mark, at);
      double clear = 2 * ROOM;
      for (Primitive line : lines) {
        clear = Math.min(clear, line.distanceTo(middle));
      }
      if (clear > most + 1e-9) {
        most = clear;
        best = mark;
      }
      if (most >= ROOM) {
        return best;
      }
    }
    return best;
  }
}
