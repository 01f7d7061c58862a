package org.bearingline.export.pdf;

import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * A line of text in its place on the page.
 *
 * @param text the words
 * @param size mm of the em
 * @param at the anchor, on half the height of the capitals
 * @param degrees counter-clockwise turn
 * @param share of the width that stands before the anchor, 0 to 1
 */
record Words(String text, double size, Point at, double degrees, double share) {

  Bounds bounds(Fonts fonts) {
    double width = fonts.width(Typeface.REGULAR, size, text);
    Point along = Point.polar(1, degrees);
    Point start = at.minus(along.times(share * width));
    Point end = start.plus(along.times(width));
    return Bounds.of(start, end).grown(size * 0.55);
  }

  boolean isWithin(Bounds window, Fonts fonts) {
    Bounds box = bounds(fonts);
    return window.contains(new Point(box.minX(), box.minY()))
        && window.contains(new Point(box.maxX(), box.maxY()));
  }

  void write(Canvas canvas, Typeface face) {
    Point down = Point.polar(1, degrees).left().times(-size * Fonts.CAPITALS / 2);
    canvas.text(face, size, at.plus(down), degrees, share, 1, text);
  }
}
