package org.bearingline.routing;

import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;

/**
 * One piece of P \ A: wood of the part that the cutter takes off, such as an outside corner worked
 * with a collar.
 *
 * @param edge {@link Template#OUTSIDE_EDGE} or the cavity's name
 * @param piece its shape
 * @param at the point of the part's edge that is lost the deepest
 * @param area mm²
 * @param depth mm from {@code at} to the cut
 */
public record Overcut(String edge, Outline piece, Point at, double area, double depth) {}
