package org.bearingline.outside.scan;

/**
 * Which pixels the template covers, and how far each is from half covered. Light is smoothed by a
 * bell of one pixel before it is judged, which takes the noise of single pixels away.
 */
final class Silhouette {

  static final byte TEMPLATE = 1;
  static final byte BEYOND = 2;
  static final byte MARK = 3;

  private static final float[] BELL = {1 / 16f, 4 / 16f, 6 / 16f, 4 / 16f, 1 / 16f};

  private final GreyImage image;
  private final Levels levels;
  private final byte[] kinds;

  private Silhouette(GreyImage image, Levels levels, byte[] kinds) {
    this.image = image;
    this.levels = levels;
    this.kinds = kinds;
  }

  static Silhouette of(GreyImage image, Field field, Levels levels) {
    int width = image.width();
    byte[] kinds = new byte[width * image.height()];
    float[][] window = new float[BELL.length][width];
    float[] half = new float[width];
    for (int y = -2; y < 2; y++) {
      image.smoothRow(y, window[Math.floorMod(y, BELL.length)]);
    }
    float sign = levels.templateIsLighter() ? 1 : -1;
    for (int y = 0; y < image.height(); y++) {
      image.smoothRow(y + 2, window[Math.floorMod(y + 2, BELL.length)]);
      field.row(y, kinds, y * width);
      levels.halfRow(y, half);
      float[] above2 = window[Math.floorMod(y - 2, BELL.length)];
      float[] above = window[Math.floorMod(y - 1, BELL.length)];
      float[] here = window[Math.floorMod(y, BELL.length)];
      float[] below = window[Math.floorMod(y + 1, BELL.length)];
      float[] below2 = window[Math.floorMod(y + 2, BELL.length)];
      for (int x = 0; x < width; x++) {
        float light = (above2[x] + below2[x] + 4 * (above[x] + below[x]) + 6 * here[x]) / 16;
        if (kinds[y * width + x] == 0 && sign * (light - half[x]) > 0) {
          kinds[y * width + x] = TEMPLATE;
        }
      }
    }
    return new Silhouette(image, levels, kinds);
  }

  int width() {
    return image.width();
  }

  int height() {
    return image.height();
  }

  /** What a pixel shows; beyond the picture {@link #BEYOND}. */
  byte kind(int x, int y) {
    if (x < 0 || y < 0 || x >= image.width() || y >= image.height()) {
      return BEYOND;
    }
    return kinds[y * image.width() + x];
  }

  boolean isTemplate(int x, int y) {
    return kind(x, y) == TEMPLATE;
  }

  /** Light over the half way mark, positive towards the template. */
  double excess(int x, int y) {
    double light = 0;
    for (int dy = -2; dy <= 2; dy++) {
      double row = 0;
      for (int dx = -2; dx <= 2; dx++) {
        row += BELL[dx + 2] * image.lightAt(x + dx, y + dy);
      }
      light += BELL[dy + 2] * row;
    }
    double over = light - levels.half(x, y);
    return levels.templateIsLighter() ? over : -over;
  }
}
