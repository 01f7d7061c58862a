package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.export.Figure;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/**
 * Draws a plot on a page: filled areas under every line, words over all.
 *
 * @param canvas the page
 * @param toPage from the drawing to mm of the page, not mirrored
 * @param window what may be seen, in mm of the page
 */
record PlotPainter(Canvas canvas, Similarity toPage, Bounds window) {

  void draw(Plot plot) {
    figures(plot, Figure.Area.class).forEach(this::area);
    figures(plot, Figure.Trace.class).forEach(this::trace);
    figures(plot, Figure.Head.class).forEach(this::head);
    figures(plot, Figure.Words.class).forEach(this::words);
  }

  private static <T extends Figure> List<T> figures(Plot plot, Class<T> kind) {
    return plot.layers().stream()
        .flatMap(layer -> layer.figures().stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  private List<Primitive> placed(List<Primitive> primitives) {
    return primitives.stream().map(p -> p.transformed(toPage)).toList();
  }

  private void area(Figure.Area area) {
    canvas.brush(area.ink());
    for (Loop loop : area.outline().loops()) {
      canvas.chain(placed(loop.primitives()), true);
    }
    canvas.fill();
  }

  private void trace(Figure.Trace trace) {
    LineStyle style = trace.style().enlarged(toPage.factor());
    Strokes.draw(canvas, placed(trace.path().primitives()), style, window);
  }

  private void head(Figure.Head head) {
    canvas.brush(head.ink());
    canvas.polygon(
        true, toPage.apply(head.tip()), toPage.apply(head.left()), toPage.apply(head.right()));
    canvas.fill();
  }

  private void words(Figure.Words words) {
    double turn = words.degrees() + new Point(toPage.a(), toPage.b()).degrees();
    // Turned with the drawing, words could stand on their heads; they are turned about their place.
    boolean about = Degrees.normalised(turn - 90.001) < 179.999;
    double share =
        words.anchor() == Item.Text.Anchor.MIDDLE
            ? 0.5
            : (words.anchor() == Item.Text.Anchor.END) == about ? 0 : 1;
    double size = words.height() * toPage.factor();
    canvas.brush(words.ink());
    canvas.centred(
        Typeface.REGULAR,
        size,
        toPage.apply(words.at()),
        about ? turn + 180 : turn,
        share,
        words.text());
  }
}
