package org.bearingline.outside.scan;

import java.util.Arrays;

/** Finds points of a loop near one of them, by squares of the picture. */
final class Neighbours {

  private final TracedLoop loop;
  private final double side;
  private final double left;
  private final double top;
  private final int columns;
  private final int rows;
  private final int[] starts;
  private final int[] sorted;

  /**
   * @param side pixels of a square: how near is near
   */
  Neighbours(TracedLoop loop, double side) {
    this.loop = loop;
    this.side = side;
    double[] box = loop.box();
    this.left = box[0];
    this.top = box[1];
    this.columns = (int) ((box[2] - left) / side) + 1;
    this.rows = (int) ((box[3] - top) / side) + 1;
    this.starts = new int[columns * rows + 1];
    for (int i = 0; i < loop.size(); i++) {
      starts[square(i) + 1]++;
    }
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
    this.sorted = new int[loop.size()];
    int[] next = starts.clone();
    for (int i = 0; i < loop.size(); i++) {
      sorted[next[square(i)]++] = i;
    }
  }

  private int square(int i) {
    return (int) ((loop.ys()[i] - top) / side) * columns + (int) ((loop.xs()[i] - left) / side);
  }

  /** The points of the loop in the squares about a point, itself among them. */
  int[] of(int i) {
    int column = square(i) % columns;
    int row = square(i) / columns;
    int[] near = new int[64];
    int count = 0;
    for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
      for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
        int from = starts[y * columns + x];
        int length = starts[y * columns + x + 1] - from;
        near = count + length > near.length ? Arrays.copyOf(near, 2 * (count + length)) : near;
        System.arraycopy(sorted, from, near, count, length);
        count += length;
      }
    }
    return Arrays.copyOf(near, count);
  }
}
