package org.bearingline.routing;

import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;

/**
 * One piece of A \ P: wood that stays inside the design's waste because the cutter is too fat.
 *
 * @param number from 1, in reading order from the left
 * @param edge {@link Template#OUTSIDE_EDGE} or the cavity's name
 * @param piece its shape
 * @param at the deepest point of the part's edge in it
 * @param area mm²
 * @param depth mm from {@code at} to the cut: r (1/sin(θ/2) − 1) at a sharp corner of angle θ
 * @param insideRadius radius that a bit may have at most to leave nothing here, mm; 0 where sharp
 * @param kind a corner or a neck
 */
public record Leftover(
    int number,
    String edge,
    Outline piece,
    Point at,
    double area,
    double depth,
    double insideRadius,
    Kind kind) {

  Leftover numbered(int newNumber) {
    return new Leftover(newNumber, edge, piece, at, area, depth, insideRadius, kind);
  }

  /** What stops the cutter. */
  public enum Kind {
    /** An inside corner or arc tighter than the cutter. */
    CORNER,
    /** A place narrower than the cutter. */
    NECK;

    public String word() {
      return this == CORNER ? "corner" : "neck";
    }
  }
}
