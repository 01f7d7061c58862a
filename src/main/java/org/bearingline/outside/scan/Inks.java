package org.bearingline.outside.scan;

import java.awt.image.Raster;

/** The light that four printing inks leave. */
final class Inks {

  private Inks() {}

  /**
   * Grey of a picture in four bands as programs write them into JPEG: 255 is no ink, and light is
   * what all of them let through.
   */
  static GreyImage grey(Raster inks) {
    int width = inks.getWidth();
    int height = inks.getHeight();
    byte[] levels = new byte[width * height];
    int[] row = new int[width * 4];
    for (int y = 0; y < height; y++) {
      inks.getPixels(inks.getMinX(), inks.getMinY() + y, width, 1, row);
      for (int x = 0; x < width; x++) {
        int at = 4 * x;
        int colours = (299 * row[at] + 587 * row[at + 1] + 114 * row[at + 2]) / 1000;
        levels[y * width + x] = (byte) (colours * row[at + 3] / 255);
      }
    }
    return new GreyImage(width, height, levels);
  }
}
