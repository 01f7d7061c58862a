package org.bearingline.export;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.TextWidth;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Turns the items of one layer into figures. */
final class Plotter {

  private final Ink fill;
  private final LineStyle style;
  private final double textHeight;
  private final TextWidth width;
  private final DimensionPlotter dimensions;
  private final List<Figure> figures = new ArrayList<>();

  Plotter(Layer layer, LineStyle style, Drawing drawing, Units units, TextWidth width) {
    this.fill = Style.fill(layer);
    this.style = style;
    this.textHeight = drawing.textHeight();
    this.width = width;
    this.dimensions = new DimensionPlotter(drawing, units, width, figures::add);
  }

  List<Figure> figures() {
    return List.copyOf(figures);
  }

  void add(Item item) {
    if (item instanceof Item.Stroke stroke) {
      figures.add(new Figure.Trace(stroke.path(), style));
    } else if (item instanceof Item.Fill area) {
      figures.add(new Figure.Area(area.outline(), fill));
      area.outline().loops().forEach(loop -> figures.add(new Figure.Trace(Path.of(loop), style)));
    } else if (item instanceof Item.Drill drill) {
      addDrill(drill);
    } else if (item instanceof Item.Arrow arrow) {
      addArrow(arrow);
    } else if (item instanceof Item.Text text) {
      figures.add(
          new Figure.Words(
              text.text(),
              text.height(),
              width.of(text.text(), text.height()),
              text.at(),
              text.degrees(),
              text.anchor(),
              Style.LETTERING));
    } else if (item instanceof Item.Dimension dimension) {
      dimensions.add(dimension);
    } else {
      throw new IllegalStateException("an item of an unknown kind");
    }
  }

  private void addDrill(Item.Drill drill) {
    double radius = drill.diameter() / 2;
    LineStyle solid = new LineStyle(style.ink(), style.width(), List.of());
    figures.add(new Figure.Trace(Path.of(Arc.circle(drill.at(), radius)), solid));
    // The cross runs on past the circle, so that it can be found when the circle is drilled away.
    double arm = radius + Math.max(radius * 0.3, textHeight * 0.4);
    for (Point half : List.of(new Point(arm, 0), new Point(0, arm))) {
      figures.add(
          new Figure.Trace(
              Path.of(new Line(drill.at().minus(half), drill.at().plus(half))), solid));
    }
  }

  private void addArrow(Item.Arrow arrow) {
    List<Primitive> pieces = new ArrayList<>(arrow.path().primitives());
    Primitive last = pieces.remove(pieces.size() - 1);
    // The line ends inside the head, so that its square end does not blunt the tip.
    double shaft = 1 - arrow.head() * 0.7 / last.length();
    if (shaft > 0) {
      pieces.add(last.part(0, shaft));
    }
    if (!pieces.isEmpty()) {
      figures.add(new Figure.Trace(new Path(pieces), style));
    }
    double share = Math.max(0, 1 - arrow.head() / 2 / last.length());
    Point direction = last.end().minus(last.pointAt(share)).unit();
    figures.add(Figure.Head.pointing(last.end(), direction, arrow.head(), style.ink()));
  }
}
