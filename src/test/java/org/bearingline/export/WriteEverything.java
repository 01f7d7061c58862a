package org.bearingline.export;

import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.dxf.DxfWriter;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;

/** Writes the trial drawing in every format into the folder given, in a Java of its own. */
public final class WriteEverything {

  private WriteEverything() {}

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    Drawing drawing = DemoDrawing.of(1);
    Files.write(folder.resolve("drawing.svg"), SvgWriter.write(drawing, Units.INCH));
    Files.write(folder.resolve("drawing.dxf"), DxfWriter.write(drawing, Units.INCH));
    Files.write(folder.resolve("drawing.png"), PngWriter.write(drawing, Units.INCH, 800));
  }
}
