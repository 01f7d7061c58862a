package org.bearingline.export;

import java.util.function.Consumer;
import org.bearingline.drawing.DimensionLayout;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.drawing.TextWidth;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;

/** Draws dimensions as lines, heads and figures in the reader's units. */
final class DimensionPlotter {

  private final LineStyle style;
  private final Units units;
  private final TextWidth width;
  private final Consumer<Figure> out;
  private final double height;

  DimensionPlotter(Drawing drawing, Units units, TextWidth width, Consumer<Figure> out) {
    this.style = Style.of(LayerName.LABELS, Role.NOTE).enlarged(drawing.enlargement());
    this.units = units;
    this.width = width;
    this.out = out;
    this.height = drawing.textHeight();
  }

  void add(Item.Dimension dimension) {
    String words = dimension.prefix() + Length.printDrawn(dimension.value(), units);
    double wide = width.of(words, height);
    DimensionLayout layout = DimensionLayout.of(dimension, wide, height);
    layout.extensions().forEach(this::draw);
    layout.line().ifPresent(this::draw);
    double head = DimensionLayout.HEAD * height;
    for (DimensionLayout.Head at : layout.heads()) {
      out.accept(Figure.Head.pointing(at.tip(), at.direction(), head, style.ink()));
    }
    out.accept(
        new Figure.Words(
            words,
            height,
            wide,
            layout.words(),
            layout.degrees(),
            layout.anchor(),
            Style.LETTERING));
  }

  private void draw(Line line) {
    out.accept(new Figure.Trace(Path.of(line), style));
  }
}
