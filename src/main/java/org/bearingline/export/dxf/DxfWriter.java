package org.bearingline.export.dxf;

import org.bearingline.drawing.Drawing;
import org.bearingline.length.Units;

/** Writes a drawing as ASCII DXF in millimetres. */
public final class DxfWriter {

  private DxfWriter() {}

  /** The file's bytes; {@code units} only change the words of dimensions. */
  public static byte[] write(Drawing drawing, Units units) {
    throw new UnsupportedOperationException();
  }
}
