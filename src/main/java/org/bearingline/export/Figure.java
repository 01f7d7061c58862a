package org.bearingline.export;

import org.bearingline.drawing.Item;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/** One of the few plain things that every format can draw, in mm, y up. */
public sealed interface Figure {

  /** A line along a path. */
  record Trace(Path path, LineStyle style) implements Figure {}

  /** A filled area without a line round it. */
  record Area(Outline outline, Ink ink) implements Figure {}

  /** A filled triangle, the head of an arrow. */
  record Head(Point tip, Point left, Point right, Ink ink) implements Figure {

    /** A slender head with its tip at {@code tip}, pointing along the unit vector. */
    static Head pointing(Point tip, Point direction, double length, Ink ink) {
      Point base = tip.minus(direction.times(length));
      Point half = direction.left().times(length / 6);
      return new Head(tip, base.plus(half), base.minus(half), ink);
    }
  }

  /**
   * One line of words.
   *
   * @param text what it says
   * @param height size of the font, its em, in mm
   * @param width of the words in mm
   * @param at the anchor, half way up the capitals
   * @param degrees counter-clockwise turn
   * @param anchor which point along the words stands at {@code at}
   * @param ink colour
   */
  record Words(
      String text,
      double height,
      double width,
      Point at,
      double degrees,
      Item.Text.Anchor anchor,
      Ink ink)
      implements Figure {

    /** From half way up the capitals to the top and bottom of the box kept free, in ems. */
    private static final double HALF_BOX = 0.62;

    /** Left end of the words, half way up the capitals. */
    public Point left() {
      double back =
          switch (anchor) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
          };
      return at.minus(Point.polar(back, degrees));
    }

    /** A box round the words, accents and descenders included. */
    public Bounds box() {
      Point along = Point.polar(width, degrees);
      Point up = Point.polar(height * HALF_BOX, degrees + 90);
      Point low = left().minus(up);
      Point high = left().plus(up);
      return Bounds.of(low, high).union(Bounds.of(low.plus(along), high.plus(along)));
    }
  }
}
