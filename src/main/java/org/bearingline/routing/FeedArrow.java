package org.bearingline.routing;

import org.bearingline.outline.Point;

/**
 * The way of the bit along an edge against its turn, seen from face A.
 *
 * @param at where the cutter's centre is
 * @param degrees direction in which the bit passes, counter-clockwise from x
 * @param room length of the path round it, mm, that runs nearly straight
 * @param edge {@link Template#OUTSIDE_EDGE} or the cavity's name
 */
public record FeedArrow(Point at, double degrees, double room, String edge) {

  /** The same place passed the other way. */
  public FeedArrow reversed() {
    return new FeedArrow(at, degrees + 180, room, edge);
  }
}
