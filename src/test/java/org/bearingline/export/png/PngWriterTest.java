package org.bearingline.export.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.DemoDrawing;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PngWriterTest {

  private static BufferedImage picture(Drawing drawing, int width) throws Exception {
    byte[] file = PngWriter.write(drawing, Units.MM, width);
    return ImageIO.read(new ByteArrayInputStream(file));
  }

  @ParameterizedTest
  @CsvSource({"0.05, 700", "1, 1600", "12, 1600", "12, 400"})
  void everyPointOfTheTemplateIsInkOnWhite(double size, int width) throws Exception {
    Drawing drawing = DemoDrawing.of(size, 1);
    BufferedImage image = picture(drawing, width);
    Bounds page = Plot.of(drawing, Units.MM, Typeface.REGULAR::width).page();
    double scale = width / page.width();
    assertEquals(width, image.getWidth());
    assertEquals(page.height() * scale, image.getHeight(), 1);
    assertEquals(0xffffffff, image.getRGB(0, 0));
    for (Primitive piece : DemoDrawing.plate(size).primitives()) {
      for (double t = 0.02; t < 1; t += 0.02) {
        Point at = piece.pointAt(t);
        int x = (int) ((at.x() - page.minX()) * scale);
        int y = (int) ((page.maxY() - at.y()) * scale);
        assertTrue(
            darkest(image, x, y) < 150, () -> "no line at " + at + ", pixel " + x + ", " + y);
      }
    }
  }

  /** Of a pixel and its neighbours: a line on a pixel's edge may be painted on either side. */
  private static int darkest(BufferedImage image, int x, int y) {
    int least = 255;
    for (int j = y - 1; j <= y + 1; j++) {
      for (int i = x - 1; i <= x + 1; i++) {
        least = Math.min(least, image.getRGB(i, j) >> 8 & 255);
      }
    }
    return least;
  }

  @Test
  void twiceTheSameBytes() {
    byte[] once = PngWriter.write(DemoDrawing.of(1), Units.INCH, 640);
    assertArrayEquals(once, PngWriter.write(DemoDrawing.of(1), Units.INCH, 640));
  }

  @Test
  void pictureOfNoWidthIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> PngWriter.write(DemoDrawing.of(1), Units.MM, 3));
  }
}
