package org.bearingline.export.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Layer;
import org.bearingline.export.Figure;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * A drawing's figures as path data and words, for a screen that gives them its own look. One unit
 * is one millimetre, x right, y down, the origin is the drawing's own, so that what is drawn does
 * not shift when its size changes. Figures are rounded to 1e-4 mm.
 *
 * @param view what must be shown, words and a margin included
 * @param layers in drawing order
 */
public record ScreenDrawing(Box view, List<ScreenLayer> layers) {

  private static final Bounds ORIGIN = Bounds.of(Point.ORIGIN);

  /** A rectangle by its upper left corner and its size, mm. */
  public record Box(double x, double y, double width, double height) {

    /** The rectangle that a box of the drawing, with y up, makes on a screen. */
    public static Box of(Bounds bounds) {
      return new Box(
          SvgNumbers.rounded(bounds.minX()),
          SvgNumbers.rounded(-bounds.maxY()),
          SvgNumbers.rounded(bounds.width()),
          SvgNumbers.rounded(bounds.height()));
    }
  }

  /**
   * One layer.
   *
   * @param id as in the SVG file
   * @param title a few words for a person
   * @param role what it asks of the maker: cut, locate, saw, mark or note
   * @param figures in drawing order
   */
  public record ScreenLayer(String id, String title, String role, List<ScreenFigure> figures) {}

  /** One figure. */
  public sealed interface ScreenFigure {}

  /**
   * A line or an area.
   *
   * @param kind {@code line}, {@code area} (filled) or {@code head} (of an arrow, filled)
   * @param d path data
   */
  public record Drawn(String kind, String d) implements ScreenFigure {}

  /**
   * Words.
   *
   * @param kind {@code words}
   * @param text what they say
   * @param x where their anchor stands, on their base line
   * @param y likewise
   * @param turn degrees about that point, clockwise as SVG counts
   * @param size em of the font, mm
   * @param anchor start, middle or end
   * @param width of the words in the shipped font, mm
   */
  public record Written(
      String kind,
      String text,
      double x,
      double y,
      double turn,
      double size,
      String anchor,
      double width)
      implements ScreenFigure {}

  /** The figures of a drawing with at least one item. */
  public static ScreenDrawing of(Drawing drawing, Units units) {
    Plot plot = SvgDocument.plot(drawing, units);
    List<ScreenLayer> layers = new ArrayList<>();
    for (Plot.PlotLayer plotted : plot.layers()) {
      Layer layer = plotted.layer();
      layers.add(
          new ScreenLayer(
              layer.name().id(),
              layer.title(),
              layer.role().name().toLowerCase(Locale.ROOT),
              plotted.figures().stream().map(ScreenDrawing::figure).toList()));
    }
    return new ScreenDrawing(Box.of(plot.page()), layers);
  }

  /** Path data of an outline, its openings included. */
  public static String pathData(Outline outline) {
    PathData data = new PathData(ORIGIN, SvgNumbers::coarse);
    outline.loops().forEach(loop -> data.add(Path.of(loop)));
    return data.toString();
  }

  /** Path data of lines that need not close. */
  public static String pathData(List<Path> paths) {
    PathData data = new PathData(ORIGIN, SvgNumbers::coarse);
    paths.forEach(data::add);
    return data.toString();
  }

  private static ScreenFigure figure(Figure figure) {
    if (figure instanceof Figure.Trace trace) {
      PathData data = new PathData(ORIGIN, SvgNumbers::coarse);
      return new Drawn("line", data.add(trace.path()).toString());
    } else if (figure instanceof Figure.Area area) {
      return new Drawn("area", pathData(area.outline()));
    } else if (figure instanceof Figure.Head head) {
      PathData data = new PathData(ORIGIN, SvgNumbers::coarse);
      return new Drawn("head", data.triangle(head.tip(), head.left(), head.right()).toString());
    } else if (figure instanceof Figure.Words words) {
      return words(words);
    }
    throw new IllegalStateException("a figure of an unknown kind");
  }

  private static ScreenFigure words(Figure.Words words) {
    double drop = Typeface.REGULAR.capHeight(words.height()) / 2;
    Point base = words.at().plus(Point.polar(drop, words.degrees() - 90));
    return new Written(
        "words",
        words.text(),
        SvgNumbers.rounded(base.x()),
        SvgNumbers.rounded(-base.y()),
        SvgNumbers.rounded(-words.degrees()),
        SvgNumbers.rounded(words.height()),
        words.anchor().name().toLowerCase(Locale.ROOT),
        SvgNumbers.rounded(words.width()));
  }
}
