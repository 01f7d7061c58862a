package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.Crossings;
import org.bearingline.outline.topology.Pieces;

/**
 * Cuts off the loops smaller than a gap in which a closed line crosses itself, such as two edges
 * leave that run past their corner by a little.
 *
 * @param pieces of the closed line without them
 * @param count how many were cut off
 * @param largest mm of line in the longest of them
 * @param at where it crossed itself
 */
record TinyLoops(List<Primitive> pieces, int count, double largest, Point at) {

  /** Share of the longest loop below which two crossings are one. */
  private static final double SAME = 1e-6;

  /** The line without loops of up to {@code longest} mm. */
  static TinyLoops without(List<Primitive> pieces, double longest) {
    List<Primitive> left = new ArrayList<>(pieces);
    int count = 0;
    double largest = 0;
    Point at = null;
    int i = 0;
    while (i < left.size()) {
      Cut cut = cut(left, i, longest);
      if (cut == null) {
        i++;
        continue;
      }
      left = cut.rest;
      count++;
      if (cut.length > largest) {
        largest = cut.length;
        at = cut.at;
      }
    }
    return new TinyLoops(List.copyOf(left), count, largest, at);
  }

  private record Cut(List<Primitive> rest, double length, Point at) {}

  // The first loop that starts on piece i, or null.
  private static Cut cut(List<Primitive> pieces, int i, double longest) {
    int n = pieces.size();
    double between = 0;
    for (int step = 1; step < n && between <= longest; step++) {
      int j = (i + step) % n;
      Primitive before = pieces.get(i);
      Primitive after = pieces.get(j);
      Point met = meeting(before, after, SAME * longest);
      if (met != null) {
        List<Primitive> kept = part(before, before.start(), met);
        List<Primitive> next = part(after, met, after.end());
        double length = before.length() - length(kept) + between + after.length() - length(next);
        if (length <= longest && length > 0 && !(kept.isEmpty() && next.isEmpty())) {
          return new Cut(rest(pieces, i, step, kept, next), length, met);
        }
      }
      between += after.length();
    }
    return null;
  }

  // Nothing where the line crosses itself just where the piece starts or ends.
  private static List<Primitive> part(Primitive piece, Point start, Point end) {
    return start.equals(end) ? List.of() : List.of(SamePiece.between(piece, start, end));
  }

  private static double length(List<Primitive> pieces) {
    return pieces.stream().mapToDouble(Primitive::length).sum();
  }

  private static List<Primitive> rest(
      List<Primitive> pieces, int i, int step, List<Primitive> kept, List<Primitive> next) {
    int n = pieces.size();
    List<Primitive> rest = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      int after = Math.floorMod(k - i, n);
      if (after == 0) {
        rest.addAll(kept);
      } else if (after == step) {
        rest.addAll(next);
      } else if (after > step) {
        rest.add(pieces.get(k));
      }
    }
    return rest;
  }

  private static Point meeting(Primitive before, Primitive after, double tolerance) {
    Pieces two = new Pieces(2);
    two.add(before, before.end().x(), before.end().y(), 0);
    two.add(after, before.end().x(), before.end().y(), 1);
    Crossings crossings = new Crossings(two, tolerance);
    if (crossings.cross(0, 1) == 0) {
      return null;
    }
    Point met = new Point(crossings.lastX(), crossings.lastY()).plus(before.end());
    for (Point end : List.of(before.start(), after.end())) {
      if (end.distanceTo(met) <= tolerance) {
        return end;
      }
    }
    return met;
  }
}
