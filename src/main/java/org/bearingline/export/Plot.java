package org.bearingline.export;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.TextWidth;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;

/**
 * A drawing brought down to plain figures, with the words of its dimensions made: what the writers
 * of all formats share.
 *
 * @param title of the drawing
 * @param layers in drawing order
 * @param content a box round everything, words included
 * @param margin free space in mm that a page leaves round the content
 */
public record Plot(String title, List<PlotLayer> layers, Bounds content, double margin) {

  /** Margin in mm at an enlargement of 1. */
  private static final double MARGIN = 3;

  /**
   * One layer's figures.
   *
   * @param layer where they come from
   * @param style of the layer's lines, enlarged
   * @param figures in drawing order
   */
  public record PlotLayer(Layer layer, LineStyle style, List<Figure> figures) {}

  /**
   * Plots a drawing.
   *
   * @param drawing at least one item in it
   * @param units in which dimensions are written
   * @param width how wide words are in the font used
   */
  public static Plot of(Drawing drawing, Units units, TextWidth width) {
    List<PlotLayer> layers = new ArrayList<>();
    Bounds box = drawing.bounds();
    for (Layer layer : drawing.layers()) {
      LineStyle style = Style.of(layer).enlarged(drawing.enlargement());
      Plotter plotter = new Plotter(layer, style, drawing, units, width);
      layer.items().forEach(plotter::add);
      layers.add(new PlotLayer(layer, style, plotter.figures()));
      for (Figure figure : plotter.figures()) {
        box = box.union(boundsOf(figure));
      }
    }
    return new Plot(drawing.title(), List.copyOf(layers), box, MARGIN * drawing.enlargement());
  }

  /** The content with its margin. */
  public Bounds page() {
    return content.grown(margin);
  }

  private static Bounds boundsOf(Figure figure) {
    if (figure instanceof Figure.Trace trace) {
      return trace.path().bounds();
    } else if (figure instanceof Figure.Area area) {
      return area.outline().bounds();
    } else if (figure instanceof Figure.Head head) {
      return Bounds.of(head.left(), head.right()).union(Bounds.of(head.tip()));
    } else if (figure instanceof Figure.Words words) {
      return words.box();
    }
    throw new IllegalStateException("a figure of an unknown kind");
  }
}
