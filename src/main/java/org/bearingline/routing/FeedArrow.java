package org.bearingline.routing;

import org.bearingline.outline.Point;

/**
 * The direction to feed a hand-held router, seen from above.
 *
 * @param at where the cutter's centre is
 * @param degrees direction of feed, counter-clockwise from x
 * @param room length of the path round it, mm, that runs nearly straight
 * @param edge {@link Template#OUTSIDE_EDGE} or the cavity's name
 */
public record FeedArrow(Point at, double degrees, double room, String edge) {}
