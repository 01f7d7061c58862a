package org.bearingline.cutlist;

/**
 * How near to the best a packing is, in one stock of boards. Both lower bounds hold for every way
 * of placing the same blanks, cut straight through or not, unless {@code proven}, when they are the
 * best that straight-through cuts can do.
 *
 * @param boards how many boards the packing cuts into
 * @param leastBoards no packing of the same blanks does with fewer
 * @param area of the boards cut into, mm²
 * @param leastArea no packing of the same blanks cuts into less, mm²
 * @param proven whether every way of cutting straight through was looked at
 */
public record Bound(int boards, int leastBoards, double area, double leastArea, boolean proven) {

  /** Share by which the board area may be above the least, 0 where it is the least. */
  public double gap() {
    return leastArea > 0 ? Math.max(0, area / leastArea - 1) : 0;
  }
}
