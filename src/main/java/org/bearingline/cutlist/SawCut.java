package org.bearingline.cutlist;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * One straight cut right through the piece it is made in.
 *
 * @param number from 1, in the order of sawing
 * @param direction along or across the board
 * @param piece what is cut in two, on the board, mm
 * @param from where the kerf's middle begins, mm on the board
 * @param to where it ends
 * @param setting mm from the piece's low edge to the near side of the kerf: the fence's distance
 */
public record SawCut(
    int number, Direction direction, Bounds piece, Point from, Point to, double setting) {

  /** How a cut lies to the board. */
  public enum Direction {
    /** Along the board's length. */
    RIP,
    /** Across it. */
    CROSSCUT
  }
}
