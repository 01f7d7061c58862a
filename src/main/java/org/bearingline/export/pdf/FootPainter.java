package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.sheet.FootText;
import org.bearingline.drawing.sheet.PageFrame;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.Ink;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Style;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/** The words at the foot of a page: its name, the title, what each line means, what to mind. */
final class FootPainter {

  private static final Ink BLACK = new Ink(0, 0, 0);
  private static final double NAME_SIZE = 11;
  private static final double TITLE_SIZE = 3.6;

  private final Canvas canvas;
  private final SheetPlan plan;
  private final Bounds box;
  private double top;

  FootPainter(Canvas canvas, SheetPlan plan) {
    this.canvas = canvas;
    this.plan = plan;
    this.box = plan.frame().text();
    this.top = box.maxY();
  }

  void draw(Drawing drawing, Sheet sheet) {
    canvas.brush(BLACK);
    name(sheet);
    title(sheet);
    boolean first = true;
    for (String sentence : plan.text().sentences()) {
      sentence(sentence, first ? Typeface.SEMIBOLD : Typeface.REGULAR);
      if (first) {
        legend(drawing);
      }
      first = false;
    }
  }

  private void name(Sheet sheet) {
    Bounds bar = plan.frame().bar();
    Point corner = new Point(bar.maxX(), bar.minY() + 0.8);
    canvas.text(Typeface.SEMIBOLD, NAME_SIZE, corner, 0, 1, 1, sheet.name());
  }

  private void title(Sheet sheet) {
    String pages = "page " + plan.number(sheet) + " of " + plan.sheets().size();
    double base = top - TITLE_SIZE;
    double right = canvas.fonts().width(Typeface.REGULAR, FootText.SIZE, pages) + 3;
    canvas.text(Typeface.REGULAR, FootText.SIZE, new Point(box.maxX(), base), 0, 1, 1, pages);
    fitted(
        Typeface.SEMIBOLD,
        TITLE_SIZE,
        new Point(box.minX(), base),
        box.width() - right,
        plan.text().title());
    top -= FootText.TITLE_LINE;
  }

  /** One line of text, narrowed where it is wider than its place. */
  private void fitted(Typeface face, double size, Point at, double width, String words) {
    double natural = canvas.fonts().width(face, size, words);
    canvas.text(face, size, at, 0, 0, Math.min(1, width / natural), words);
  }

  private void sentence(String words, Typeface face) {
    int room = FootText.lines(words, box.width());
    TextFlow flow = new TextFlow(canvas.fonts(), face, FootText.SIZE);
    double wider = box.width();
    List<String> lines = flow.lines(words, wider);
    while (lines.size() > room) {
      wider *= 1.05;
      lines = flow.lines(words, wider);
    }
    for (String line : lines) {
      fitted(face, FootText.SIZE, base(), box.width(), line);
      top -= FootText.LINE;
    }
  }

  private Point base() {
    return new Point(box.minX(), top - FootText.SIZE);
  }

  private void legend(Drawing drawing) {
    int columns = plan.text().legendColumns(box.width());
    int lines = plan.text().legendLines(box.width());
    double column = box.width() / columns;
    List<Layer> layers = FootText.shown(drawing).toList();
    for (int i = 0; i < layers.size(); i++) {
      double x = box.minX() + (i / lines) * column;
      double base = top - FootText.SIZE - (i % lines) * FootText.LINE;
      sample(layers.get(i), new Point(x, base + Typeface.REGULAR.capHeight(FootText.SIZE) / 2));
      canvas.brush(BLACK);
      fitted(
          Typeface.REGULAR,
          FootText.SIZE,
          new Point(x + FootText.SAMPLE, base),
          column - FootText.SAMPLE - 2,
          layers.get(i).title());
    }
    top -= lines * FootText.LINE;
  }

  private void sample(Layer layer, Point start) {
    LineStyle style = Style.of(layer);
    Point end = start.plus(new Point(FootText.SAMPLE - 1.5, 0));
    // Begun within the first dash, so that a long one leaves room for the gap that marks it.
    double half = style.isSolid() ? 0 : style.dashes().get(0) / 2;
    canvas.pen(style, half);
    canvas.rule(start, end);
  }

  /** The two bars, each named after the paper's side along which it lies. */
  void bars() {
    PageFrame frame = plan.frame();
    Point across = new Point(frame.bar().minX() + 5.5, frame.bar().minY() + 4);
    new ScaleBar(frame.turned() ? "Y" : "X", across, false).draw(canvas);
    Point up = new Point(frame.side().minX() + 3.5, frame.side().minY() + 5);
    new ScaleBar(frame.turned() ? "X" : "Y", up, true).draw(canvas);
  }
}
