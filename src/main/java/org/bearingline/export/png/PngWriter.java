package org.bearingline.export.png;

import org.bearingline.drawing.Drawing;
import org.bearingline.length.Units;

/** Paints a drawing as a PNG picture on white ground. */
public final class PngWriter {

  private PngWriter() {}

  /**
   * The file's bytes.
   *
   * @param widthPx width of the picture in pixels, at least 16
   */
  public static byte[] write(Drawing drawing, Units units, int widthPx) {
    throw new UnsupportedOperationException();
  }
}
