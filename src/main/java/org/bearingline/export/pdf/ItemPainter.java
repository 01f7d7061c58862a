package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.sheet.DrawnLines;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Style;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/**
 * Draws the items of a drawing. Lines keep the width of their style at any scale; words and
 * dimensions are drawn only where the window holds them whole, as half a number is worse than none.
 */
final class ItemPainter {

  private final Canvas canvas;
  private final Similarity toPage;
  private final Bounds window;
  private final double leastText;
  private final Units units;

  /**
   * @param toPage from the drawing to mm of the page
   * @param window what may be seen, in mm of the page
   * @param leastText size below which no words are written, mm of the em
   */
  ItemPainter(Canvas canvas, Similarity toPage, Bounds window, double leastText, Units units) {
    this.canvas = canvas;
    this.toPage = toPage;
    this.window = window;
    this.leastText = leastText;
    this.units = units;
  }

  /** All layers in their order; filled areas lie under every line. */
  void draw(Drawing drawing) {
    for (Layer layer : drawing.layers()) {
      for (Item item : layer.items()) {
        if (item instanceof Item.Fill fill) {
          area(fill, layer);
        }
      }
    }
    for (Layer layer : drawing.layers()) {
      LineStyle style = Style.of(layer);
      for (Item item : layer.items()) {
        draw(item, style);
      }
    }
  }

  private void draw(Item item, LineStyle style) {
    if (item instanceof Item.Stroke stroke) {
      line(stroke.path().primitives(), style);
    } else if (item instanceof Item.Fill fill) {
      fill.outline().loops().forEach(loop -> line(loop.primitives(), style));
    } else if (item instanceof Item.Drill drill) {
      DrawnLines.of(drill).forEach(primitive -> line(List.of(primitive), style));
    } else if (item instanceof Item.Arrow arrow) {
      arrow(arrow, style);
    } else if (item instanceof Item.Text text) {
      text(text, style);
    } else if (item instanceof Item.Dimension dimension) {
      new DimensionPainter(canvas, window, leastText, units).draw(dimension, toPage, style);
    } else {
      throw new IllegalStateException("no way is known to draw " + item);
    }
  }

  private List<Primitive> placed(List<Primitive> primitives) {
    return primitives.stream().map(p -> p.transformed(toPage)).toList();
  }

  private void line(List<Primitive> primitives, LineStyle style) {
    Strokes.draw(canvas, placed(primitives), style, window);
  }

  private void area(Item.Fill fill, Layer layer) {
    canvas.brush(Style.fill(layer));
    for (Loop loop : fill.outline().loops()) {
      canvas.chain(placed(loop.primitives()), true);
    }
    canvas.fill();
  }

  private void arrow(Item.Arrow arrow, LineStyle style) {
    line(arrow.path().primitives(), style);
    List<Primitive> path = arrow.path().primitives();
    Primitive last = path.get(path.size() - 1).transformed(toPage);
    double head = Math.max(arrow.head() * toPage.factor(), 2);
    head(last.end(), last.tangentAt(1), head, style);
  }

  private void head(Point tip, Point along, double length, LineStyle style) {
    Point back = tip.minus(along.times(length));
    Point aside = along.left().times(length * 0.28);
    canvas.brush(style.ink());
    canvas.polygon(true, tip, back.plus(aside), back.minus(aside));
    canvas.fill();
  }

  private void text(Item.Text text, LineStyle style) {
    double size = Math.max(text.height() * toPage.factor(), leastText);
    Point at = toPage.apply(text.at());
    double turn = Readable.degrees(text.degrees() + new Point(toPage.a(), toPage.b()).degrees());
    boolean flipped = Readable.flips(text.degrees() + new Point(toPage.a(), toPage.b()).degrees());
    double share =
        switch (text.anchor()) {
          case START -> flipped ? 1 : 0;
          case MIDDLE -> 0.5;
          case END -> flipped ? 0 : 1;
        };
    Words words = new Words(text.text(), size, at, turn, share);
    if (words.isWithin(window, canvas.fonts())) {
      canvas.brush(style.ink());
      words.write(canvas, Typeface.REGULAR);
    }
  }
}
