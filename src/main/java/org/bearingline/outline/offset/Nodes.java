package org.bearingline.outline.offset;

import java.util.Arrays;

/** Gives points within a tolerance of each other one number, by hashing them into cells. */
final class Nodes {

  private final double cell;
  private final double limit;
  private final int[] table;
  private final int[] next;
  private final double[] x;
  private final double[] y;
  private int size;

  Nodes(int capacity, double tolerance) {
    cell = 8 * tolerance;
    limit = tolerance * tolerance;
    table = new int[Integer.highestOneBit(Math.max(8, capacity)) * 2];
    Arrays.fill(table, -1);
    next = new int[capacity];
    x = new double[capacity];
    y = new double[capacity];
  }

  private int slot(long column, long row) {
    long h = (column * 0x9E3779B97F4A7C15L) ^ (row * 0xC2B2AE3D27D4EB4FL);
    return (int) ((h ^ (h >>> 29)) & (table.length - 1));
  }

  /** The number of the node at (px, py), a new one where none is near. */
  int at(double px, double py) {
    double tolerance = cell / 8;
    long left = (long) Math.floor((px - tolerance) / cell);
    long right = (long) Math.floor((px + tolerance) / cell);
    long low = (long) Math.floor((py - tolerance) / cell);
    long high = (long) Math.floor((py + tolerance) / cell);
    for (long column = left; column <= right; column++) {
      for (long row = low; row <= high; row++) {
        for (int n = table[slot(column, row)]; n >= 0; n = next[n]) {
          double dx = px - x[n];
          double dy = py - y[n];
          if (dx * dx + dy * dy <= limit) {
            return n;
          }
        }
      }
    }
    int n = size++;
    x[n] = px;
    y[n] = py;
    int slot = slot((long) Math.floor(px / cell), (long) Math.floor(py / cell));
    next[n] = table[slot];
    table[slot] = n;
    return n;
  }

  int size() {
    return size;
  }

  double x(int node) {
    return x[node];
  }

  double y(int node) {
    return y[node];
  }
}
