package org.bearingline.outside.scan;

/**
 * A picture of one channel in the 256 levels of sRGB, read as linear light.
 *
 * @param width pixels in a row
 * @param height rows
 * @param levels row by row from the top; not to be changed
 */
record GreyImage(int width, int height, byte[] levels) {

  private static final float[] LIGHT = new float[256];

  static {
    for (int i = 0; i < LIGHT.length; i++) {
      LIGHT[i] = (float) light(i / 255.0);
    }
  }

  /** Linear light of an sRGB value, both from 0 to 1 (IEC 61966-2-1:1999, 5.2). */
  static double light(double srgb) {
    return srgb <= 0.04045 ? srgb / 12.92 : Math.pow((srgb + 0.055) / 1.055, 2.4);
  }

  /** Left and right exchanged. */
  GreyImage mirrored() {
    byte[] exchanged = new byte[levels.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        exchanged[y * width + x] = levels[y * width + width - 1 - x];
      }
    }
    return new GreyImage(width, height, exchanged);
  }

  int level(int x, int y) {
    return levels[y * width + x] & 0xff;
  }

  /** Linear light of a pixel, 0 to 1; beyond the picture its rim goes on. */
  float lightAt(int x, int y) {
    int cx = Math.max(0, Math.min(width - 1, x));
    int cy = Math.max(0, Math.min(height - 1, y));
    return LIGHT[levels[cy * width + cx] & 0xff];
  }

  /** Linear light between pixels, by bilinear interpolation. */
  double lightAt(double x, double y) {
    int x0 = (int) Math.floor(x);
    int y0 = (int) Math.floor(y);
    double fx = x - x0;
    double fy = y - y0;
    double upper = lightAt(x0, y0) * (1 - fx) + lightAt(x0 + 1, y0) * fx;
    double lower = lightAt(x0, y0 + 1) * (1 - fx) + lightAt(x0 + 1, y0 + 1) * fx;
    return upper * (1 - fy) + lower * fy;
  }

  /**
   * A row of linear light, smoothed along the row by the binomial weights 1 4 6 4 1, which are a
   * bell of one pixel standard deviation.
   */
  void smoothRow(int y, float[] into) {
    int cy = Math.max(0, Math.min(height - 1, y));
    int row = cy * width;
    for (int x = 0; x < width; x++) {
      if (x >= 2 && x < width - 2) {
        int at = row + x;
        into[x] =
            (6 * LIGHT[levels[at] & 0xff]
                    + 4 * (LIGHT[levels[at - 1] & 0xff] + LIGHT[levels[at + 1] & 0xff])
                    + LIGHT[levels[at - 2] & 0xff]
                    + LIGHT[levels[at + 2] & 0xff])
                / 16;
      } else {
        into[x] =
            (6 * lightAt(x, cy)
                    + 4 * (lightAt(x - 1, cy) + lightAt(x + 1, cy))
                    + lightAt(x - 2, cy)
                    + lightAt(x + 2, cy))
                / 16;
      }
    }
  }
}
