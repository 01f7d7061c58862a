package org.bearingline.export.svg;

import org.bearingline.drawing.Drawing;
import org.bearingline.length.Units;

/** Writes a drawing as full-size SVG. */
public final class SvgWriter {

  private SvgWriter() {}

  /** The file's bytes; {@code units} only change the words of dimensions. */
  public static byte[] write(Drawing drawing, Units units) {
    throw new UnsupportedOperationException();
  }
}
