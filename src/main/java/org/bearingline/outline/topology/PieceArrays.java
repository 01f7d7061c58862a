package org.bearingline.outline.topology;

import java.util.Arrays;

/** The flat arrays of {@link Pieces}, which grow as pieces come. */
abstract class PieceArrays {

  public double[] x0;
  public double[] y0;
  public double[] x1;
  public double[] y1;
  public double[] cx;
  public double[] cy;
  public double[] r;
  public double[] anchorX;
  public double[] anchorY;
  public byte[] turn;
  public boolean[] full;

  /** What the piece came from, as its maker numbers things. */
  public int[] source;

  private int size;

  PieceArrays(int capacity) {
    int room = Math.max(8, capacity);
    x0 = new double[room];
    y0 = new double[room];
    x1 = new double[room];
    y1 = new double[room];
    cx = new double[room];
    cy = new double[room];
    r = new double[room];
    anchorX = new double[room];
    anchorY = new double[room];
    turn = new byte[room];
    full = new boolean[room];
    source = new int[room];
  }

  public final int size() {
    return size;
  }

  /** The number of a new piece, all of whose values are still to be set. */
  final int next() {
    if (size == x0.length) {
      int room = size * 2;
      x0 = Arrays.copyOf(x0, room);
      y0 = Arrays.copyOf(y0, room);
      x1 = Arrays.copyOf(x1, room);
      y1 = Arrays.copyOf(y1, room);
      cx = Arrays.copyOf(cx, room);
      cy = Arrays.copyOf(cy, room);
      r = Arrays.copyOf(r, room);
      anchorX = Arrays.copyOf(anchorX, room);
      anchorY = Arrays.copyOf(anchorY, room);
      turn = Arrays.copyOf(turn, room);
      full = Arrays.copyOf(full, room);
      source = Arrays.copyOf(source, room);
    }
    return size++;
  }

  /** Copies piece {@code from} over piece {@code to}. */
  public final void move(int from, int to) {
    x0[to] = x0[from];
    y0[to] = y0[from];
    x1[to] = x1[from];
    y1[to] = y1[from];
    cx[to] = cx[from];
    cy[to] = cy[from];
    r[to] = r[from];
    anchorX[to] = anchorX[from];
    anchorY[to] = anchorY[from];
    turn[to] = turn[from];
    full[to] = full[from];
    source[to] = source[from];
  }

  /** Forgets all pieces from number {@code newSize} on. */
  public final void truncate(int newSize) {
    size = Math.min(size, newSize);
  }
}
