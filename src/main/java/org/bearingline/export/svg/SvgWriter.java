package org.bearingline.export.svg;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.batik.dom.util.DOMUtilities;
import org.bearingline.drawing.Drawing;
import org.bearingline.length.Units;
import org.w3c.dom.Document;

/**
 * Writes a drawing as SVG 1.1 in UTF-8, full size: width and height are given in mm and the view
 * box in the same figures. The page fits round the drawing; y runs down it, as the standard has it.
 */
public final class SvgWriter {

  private SvgWriter() {}

  /**
   * The file's bytes.
   *
   * @param drawing with at least one item
   * @param units in which dimensions are written; they change nothing else
   */
  public static byte[] write(Drawing drawing, Units units) {
    Document document = SvgDocument.toWrite(SvgDocument.plot(drawing, units));
    StringWriter text = new StringWriter();
    text.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    try {
      DOMUtilities.writeNode(document.getDocumentElement(), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    text.write('\n');
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
