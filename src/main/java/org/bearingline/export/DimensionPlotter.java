package org.bearingline.export;

import java.util.function.Consumer;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.drawing.TextWidth;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * Draws dimensions in the way of ISO 129-1: thin lines, slender filled heads, figures above the
 * line, to be read from below or from the right (from memory). Where the heads and the figures do
 * not fit between the extension lines, the heads point inwards from outside and the figures stand
 * beside.
 */
final class DimensionPlotter {

  private final LineStyle style;
  private final Units units;
  private final TextWidth width;
  private final Consumer<Figure> out;
  private final double height;
  private final double head;

  DimensionPlotter(Drawing drawing, Units units, TextWidth width, Consumer<Figure> out) {
    this.style = Style.of(LayerName.LABELS, Role.NOTE).enlarged(drawing.enlargement());
    this.units = units;
    this.width = width;
    this.out = out;
    this.height = drawing.textHeight();
    this.head = height * 0.7;
  }

  void add(Item.Dimension dimension) {
    String words = dimension.prefix() + Length.print(dimension.value(), units);
    if (dimension.from().equals(dimension.to())) {
      say(words, dimension.to(), 0, Anchor.MIDDLE);
    } else if (dimension.isRadius()) {
      addRadius(dimension, words);
    } else {
      addDistance(dimension, words);
    }
  }

  /** A leader from the figures to the arc it speaks of. */
  private void addRadius(Item.Dimension dimension, String words) {
    Point direction = dimension.to().minus(dimension.from()).unit();
    draw(dimension.from(), dimension.to());
    out.accept(Figure.Head.pointing(dimension.to(), direction, head, style.ink()));
    boolean rightward = direction.x() > 0;
    Point beside = dimension.from().plus(new Point(rightward ? -0.3 * height : 0.3 * height, 0));
    say(words, beside, 0, rightward ? Anchor.END : Anchor.START);
  }

  private void addDistance(Item.Dimension dimension, String words) {
    Point along = dimension.to().minus(dimension.from()).unit();
    Point out = along.left().times(Math.signum(dimension.offset()));
    Point shift = along.left().times(dimension.offset());
    Point a = dimension.from().plus(shift);
    Point b = dimension.to().plus(shift);
    double distance = Math.abs(dimension.offset());
    double gap = Math.min(height * 0.3, distance / 2);
    if (distance > 0) {
      Point near = out.times(gap);
      Point far = out.times(height * 0.4);
      draw(dimension.from().plus(near), a.plus(far));
      draw(dimension.to().plus(near), b.plus(far));
    }
    double span = a.distanceTo(b);
    double wide = width.of(words, height);
    boolean headsInside = span >= 3 * head;
    boolean wordsInside = span >= wide + (headsInside ? 2.6 * head : 0.4 * height);
    heads(a, b, along, headsInside);
    double degrees = readable(along.degrees());
    Point up = Point.polar(height * 0.75, degrees + 90);
    if (wordsInside) {
      draw(
          headsInside ? a : a.minus(along.times(2 * head)),
          headsInside ? b : b.plus(along.times(2 * head)));
      say(words, a.towards(b, 0.5).plus(up), degrees, Anchor.MIDDLE);
    } else {
      // Beside the right-hand end in reading direction, the line running on under the figures.
      Point reading = Point.polar(1, degrees);
      boolean forward = reading.dot(along) > 0;
      double clear = headsInside ? 0 : 2 * head;
      Point last = forward ? b : a;
      Point first = forward ? a : b;
      Point foot = last.plus(reading.times(clear));
      draw(first.minus(reading.times(clear)), foot.plus(reading.times(wide + 0.6 * height)));
      say(words, foot.plus(reading.times(0.3 * height)).plus(up), degrees, Anchor.START);
    }
  }

  private void heads(Point a, Point b, Point along, boolean inside) {
    Point back = along.times(-1);
    out.accept(Figure.Head.pointing(a, inside ? back : along, head, style.ink()));
    out.accept(Figure.Head.pointing(b, inside ? along : back, head, style.ink()));
  }

  /** The turn at which words along that direction are read from below or from the right. */
  static double readable(double degrees) {
    if (degrees > 90 + 1e-9) {
      return degrees - 180;
    }
    return degrees <= -90 + 1e-9 ? degrees + 180 : degrees;
  }

  private void draw(Point from, Point to) {
    if (!from.equals(to)) {
      out.accept(new Figure.Trace(Path.of(new Line(from, to)), style));
    }
  }

  private void say(String words, Point at, double degrees, Anchor anchor) {
    out.accept(
        new Figure.Words(
            words, height, width.of(words, height), at, degrees, anchor, Style.LETTERING));
  }
}
