package org.bearingline.export.png;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.Plot;
import org.bearingline.export.svg.SvgDocument;
import org.bearingline.length.Units;

/**
 * Paints a drawing as a PNG picture on white ground. The picture is painted from the document tree,
 * never from text; letters are outlines, so no font is looked for.
 */
public final class PngWriter {

  /** A line finer than this many pixels would fade to grey. */
  private static final double LEAST_PIXELS = 1.2;

  private PngWriter() {}

  /**
   * The file's bytes.
   *
   * @param drawing with at least one item
   * @param units in which dimensions are written
   * @param widthPx width of the picture in pixels, at least 16; the height follows
   */
  public static byte[] write(Drawing drawing, Units units, int widthPx) {
    if (widthPx < 16) {
      throw new IllegalArgumentException("a picture is at least 16 pixels wide, got " + widthPx);
    }
    Plot plot = SvgDocument.plot(drawing, units);
    double millimetresPerPixel = plot.page().width() / widthPx;
    return png(
        Painter.paint(SvgDocument.toPaint(plot, LEAST_PIXELS * millimetresPerPixel), widthPx));
  }

  private static byte[] png(BufferedImage picture) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(picture);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
