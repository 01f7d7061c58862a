package org.bearingline.outside.scan;

/**
 * A picture in blocks of some pixels each way: the mean light of each, and whether it is looked at.
 *
 * @param size pixels each way
 * @param columns blocks in a row
 * @param rows rows of blocks
 * @param light mean linear light, row by row from the top
 * @param seen whether the whole block is looked at
 */
record Blocks(int size, int columns, int rows, double[] light, boolean[] seen) {

  /** Blocks along the longer side: enough for the light to be even within one. */
  private static final int MOST = 256;

  /** Light of a place that is all black in a file of 256 levels. */
  private static final double DARKEST = 1e-4;

  static Blocks of(GreyImage image, Field field) {
    int size = Math.max(2, (Math.max(image.width(), image.height()) + MOST - 1) / MOST);
    int columns = image.width() / size;
    int rows = image.height() / size;
    double[] light = new double[columns * rows];
    boolean[] seen = new boolean[columns * rows];
    byte[] left = new byte[image.width()];
    java.util.Arrays.fill(seen, true);
    for (int y = 0; y < rows * size; y++) {
      field.row(y, left, 0);
      for (int x = 0; x < columns * size; x++) {
        int at = y / size * columns + x / size;
        light[at] += image.lightAt(x, y);
        seen[at] &= left[x] == 0;
      }
    }
    for (int i = 0; i < light.length; i++) {
      light[i] = Math.max(DARKEST, light[i] / (size * size));
    }
    return new Blocks(size, columns, rows, light, seen);
  }

  int count() {
    return light.length;
  }

  boolean isSeen(int column, int row) {
    return column >= 0
        && row >= 0
        && column < columns
        && row < rows
        && seen[row * columns + column];
  }

  /** Whether a seen block lies within {@code depth} blocks of where looking ends. */
  boolean isRim(int column, int row, int depth) {
    return !isSeen(column - depth, row)
        || !isSeen(column + depth, row)
        || !isSeen(column, row - depth)
        || !isSeen(column, row + depth);
  }
}
