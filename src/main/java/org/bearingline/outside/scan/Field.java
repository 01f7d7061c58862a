package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * Which of a picture's pixels are looked at: within a convex area, and not in a corner mark or the
 * white next to it.
 */
final class Field {

  private final int width;
  private final int height;
  private final List<Point> area;
  private final List<List<Point>> left;

  private Field(int width, int height, List<Point> area, List<List<Point>> left) {
    this.width = width;
    this.height = height;
    this.area = area;
    this.left = left;
  }

  /** The whole picture. */
  static Field whole(GreyImage image) {
    double right = image.width() - 0.5;
    double low = image.height() - 0.5;
    List<Point> area =
        List.of(
            new Point(-0.5, -0.5),
            new Point(right, -0.5),
            new Point(right, low),
            new Point(-0.5, low));
    return new Field(image.width(), image.height(), area, List.of());
  }

  /** What lies between the centres of the marks A, B, C, D. */
  static Field between(GreyImage image, List<SeenMark> marks) {
    List<List<Point>> left = new ArrayList<>();
    marks.forEach(mark -> left.add(mark.grown(1.4)));
    return new Field(
        image.width(), image.height(), marks.stream().map(SeenMark::centre).toList(), left);
  }

  /** Fills one row with {@link Silhouette#BEYOND}, {@link Silhouette#MARK} and 0 for the rest. */
  void row(int y, byte[] into, int at) {
    int[] span = span(area, y);
    for (int x = 0; x < width; x++) {
      into[at + x] = x < span[0] || x > span[1] ? Silhouette.BEYOND : 0;
    }
    for (List<Point> mark : left) {
      int[] covered = span(mark, y);
      for (int x = covered[0]; x <= covered[1]; x++) {
        if (into[at + x] == 0) {
          into[at + x] = Silhouette.MARK;
        }
      }
    }
  }

  /** First and last pixel of a row in a convex polygon; last before first where there is none. */
  private int[] span(List<Point> polygon, int y) {
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      if (a.y() <= y != b.y() <= y) {
        double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        first = Math.min(first, x);
        last = Math.max(last, x);
      }
    }
    if (first > last) {
      return new int[] {width, -1};
    }
    return new int[] {
      (int) Math.max(0, Math.min(width, Math.ceil(first))),
      (int) Math.max(-1, Math.min(width - 1, Math.floor(last)))
    };
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }
}
