package org.bearingline.export.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.bearingline.export.Ink;
import org.bearingline.export.LineStyle;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A page to draw on, in mm from its lower left corner, y upwards. The file's own unit is 1/72 inch
 * (ISO 32000-1:2008, 8.3.2.3).
 */
final class Canvas implements AutoCloseable {

  private static final double UNITS_PER_MM = 72 / 25.4;

  private final Fonts fonts;
  private final PDPageContentStream out;
  private final double scaleX;
  private final double scaleY;

  /** Adds a page of the given size in mm whose drawing is enlarged by the two scales. */
  Canvas(PdfFile file, double width, double height, double scaleX, double scaleY) {
    this.fonts = file.fonts();
    this.scaleX = scaleX * UNITS_PER_MM;
    this.scaleY = scaleY * UNITS_PER_MM;
    PDPage page =
        new PDPage(
            new PDRectangle((float) (width * UNITS_PER_MM), (float) (height * UNITS_PER_MM)));
    file.document().addPage(page);
    try {
      out = new PDPageContentStream(file.document(), page);
      // Round joins: a mitre would reach past the corner of a line to work to.
      out.setLineJoinStyle(1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Fonts fonts() {
    return fonts;
  }

  private float x(double mm) {
    return (float) (mm * scaleX);
  }

  private float y(double mm) {
    return (float) (mm * scaleY);
  }

  private interface Step {
    void run() throws IOException;
  }

  private static void draw(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Draws {@code inside} with nothing to be seen outside {@code box}. */
  void clipped(Bounds box, Runnable inside) {
    draw(
        () -> {
          out.saveGraphicsState();
          rectangle(box);
          out.clip();
        });
    inside.run();
    draw(out::restoreGraphicsState);
  }

  /** Sets the line; {@code phase} mm of its dashes have gone by at the start. */
  void pen(LineStyle style, double phase) {
    draw(
        () -> {
          Ink ink = style.ink();
          out.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
          out.setLineWidth((float) (style.width() * UNITS_PER_MM));
          float[] dashes = new float[style.dashes().size()];
          for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) (style.dashes().get(i) * UNITS_PER_MM);
          }
          out.setLineDashPattern(dashes, (float) (phase * UNITS_PER_MM));
        });
  }

  void pen(Ink ink, double width) {
    pen(new LineStyle(ink, width, List.of()), 0);
  }

  void brush(Ink ink) {
    draw(() -> out.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f));
  }

  /** Adds a chain of primitives to the path. */
  void chain(List<Primitive> primitives, boolean closed) {
    draw(
        () -> {
          moveTo(primitives.get(0).start());
          for (Primitive primitive : primitives) {
            primitive.match(this::line, this::arc);
          }
          if (closed) {
            out.closePath();
          }
        });
  }

  private void moveTo(Point p) throws IOException {
    out.moveTo(x(p.x()), y(p.y()));
  }

  private Canvas line(Line line) {
    draw(() -> out.lineTo(x(line.end().x()), y(line.end().y())));
    return this;
  }

  private Canvas arc(Arc arc) {
    int n = Curves.count(arc);
    for (int i = 0; i < n; i++) {
      Point[] c = Curves.curve(arc, i, n);
      draw(
          () ->
              out.curveTo(
                  x(c[0].x()), y(c[0].y()), x(c[1].x()), y(c[1].y()), x(c[2].x()), y(c[2].y())));
    }
    return this;
  }

  private void rectangle(Bounds box) throws IOException {
    out.addRect(x(box.minX()), y(box.minY()), x(box.width()), y(box.height()));
  }

  /** Adds a rectangle to the path. */
  void box(Bounds box) {
    draw(() -> rectangle(box));
  }

  /** Adds an open or closed polygon to the path. */
  void polygon(boolean closed, Point... points) {
    draw(
        () -> {
          moveTo(points[0]);
          for (int i = 1; i < points.length; i++) {
            out.lineTo(x(points[i].x()), y(points[i].y()));
          }
          if (closed) {
            out.closePath();
          }
        });
  }

  void stroke() {
    draw(out::stroke);
  }

  /** Fills the path; where its loops lie in each other, every second one is a hole. */
  void fill() {
    draw(out::fillEvenOdd);
  }

  /** Draws one straight line. */
  void rule(Point from, Point to) {
    polygon(false, from, to);
    stroke();
  }

  /**
   * Writes a line of text in the brush's ink.
   *
   * @param at a point of the base line
   * @param degrees counter-clockwise turn of the base line
   * @param share of the text's width that stands before {@code at}: 0, 0.5 or 1
   * @param squeeze factor on the text's width, 1 or less
   */
  void text(
      Typeface face,
      double size,
      Point at,
      double degrees,
      double share,
      double squeeze,
      String words) {
    String clean = fonts.clean(face, words);
    if (clean.isBlank()) {
      return;
    }
    double back = -share * squeeze * fonts.width(face, size, clean);
    double c = Degrees.cos(degrees);
    double s = Degrees.sin(degrees);
    draw(
        () -> {
          out.beginText();
          out.setFont(fonts.font(face), 1);
          double em = size * UNITS_PER_MM;
          out.setTextMatrix(
              new Matrix(
                  (float) (c * em * squeeze),
                  (float) (s * em * squeeze),
                  (float) (-s * em),
                  (float) (c * em),
                  x(at.x() + c * back),
                  y(at.y() + s * back)));
          out.showText(clean);
          out.endText();
        });
  }

  /** Writes a line of text, {@code at} being half way up its capitals. */
  void centred(Typeface face, double size, Point at, double degrees, double share, String words) {
    Point down = Point.polar(face.capHeight(size) / 2, degrees - 90);
    text(face, size, at.plus(down), degrees, share, 1, words);
  }

  /** Writes a level line of text that begins at {@code at}. */
  void text(Typeface face, double size, Point at, String words) {
    text(face, size, at, 0, 0, 1, words);
  }

  @Override
  public void close() {
    draw(out::close);
  }
}
