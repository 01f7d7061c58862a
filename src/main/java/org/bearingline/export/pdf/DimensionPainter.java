package org.bearingline.export.pdf;

import org.bearingline.drawing.Item;
import org.bearingline.export.LineStyle;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * Draws a measured distance: two thin lines out from the points, the line between them with its
 * heads, and the number along it. A distance too short for its number has it beside the line's end.
 */
final class DimensionPainter {

  private static final double HEAD = 2;
  private static final double THIN = 0.13;

  /** Size of the number where the paper is at full size, mm of the em. */
  private static final double USUAL = 3.2;

  private final Canvas canvas;
  private final Bounds window;
  private final double size;
  private final Units units;

  DimensionPainter(Canvas canvas, Bounds window, double leastText, Units units) {
    this.canvas = canvas;
    this.window = window;
    this.size = Math.max(leastText, USUAL);
    this.units = units;
  }

  void draw(Item.Dimension dimension, Similarity toPage, LineStyle style) {
    Point from = toPage.apply(dimension.from());
    Point to = toPage.apply(dimension.to());
    if (from.distanceTo(to) < 1e-6) {
      return;
    }
    Point along = to.minus(from).unit();
    double side = toPage.mirrored() ? -1 : 1;
    Point shift = along.left().times(side * dimension.offset() * toPage.factor());
    Point start = from.plus(shift);
    Point end = to.plus(shift);
    String number = dimension.prefix() + Length.print(dimension.value(), units);
    Words words = words(number, start, end);
    Bounds box = Bounds.of(from, to).union(Bounds.of(start, end));
    if (!words.isWithin(window, canvas.fonts()) || !holds(box)) {
      return;
    }
    canvas.pen(style.ink(), THIN);
    canvas.brush(style.ink());
    if (shift.norm() > 0.5) {
      Point past = shift.unit().times(1.2);
      canvas.rule(from, start.plus(past));
      canvas.rule(to, end.plus(past));
    }
    canvas.rule(start, end);
    head(start, along.times(-1));
    head(end, along);
    words.write(canvas, Typeface.REGULAR);
  }

  private boolean holds(Bounds box) {
    return window.contains(new Point(box.minX(), box.minY()))
        && window.contains(new Point(box.maxX(), box.maxY()));
  }

  private Words words(String number, Point start, Point end) {
    double turn = Readable.degrees(end.minus(start).degrees());
    Point up = Point.polar(1, turn).left().times(size * 0.7);
    if (canvas.fonts().width(Typeface.REGULAR, size, number) < start.distanceTo(end) - 2 * HEAD) {
      return new Words(number, size, start.towards(end, 0.5).plus(up), turn, 0.5);
    }
    // Beside the end that lies to the right (or on top), so that the number reads on from there.
    Point along = Point.polar(1, turn);
    Point last = end.minus(start).dot(along) > 0 ? end : start;
    return new Words(number, size, last.plus(along.times(1.5)), turn, 0);
  }

  private void head(Point tip, Point along) {
    Point back = tip.minus(along.times(HEAD));
    Point aside = along.left().times(HEAD * 0.18);
    canvas.polygon(true, tip, back.plus(aside), back.minus(aside));
    canvas.fill();
  }
}
