package org.bearingline.export.png;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
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
    PNGTranscoder painter = new PNGTranscoder();
    painter.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) widthPx);
    painter.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      painter.transcode(
          new TranscoderInput(SvgDocument.toPaint(plot, LEAST_PIXELS * millimetresPerPixel)),
          new TranscoderOutput(out));
    } catch (TranscoderException e) {
      throw new IllegalStateException("the picture could not be painted", e);
    }
    return out.toByteArray();
  }
}
