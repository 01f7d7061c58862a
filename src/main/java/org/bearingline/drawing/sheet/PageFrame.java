package org.bearingline.drawing.sheet;

import org.bearingline.outline.Bounds;

/**
 * What stands where on a page, in true mm from its lower left corner, as it is read.
 *
 * @param width mm
 * @param height mm
 * @param cell where the drawing shows
 * @param foot the strip below it for words, legend, map and the bar along x
 * @param side the strip to its left for the bar along y
 * @param turned whether the page is read with its longer side across
 */
public record PageFrame(
    double width, double height, Bounds cell, Bounds foot, Bounds side, boolean turned) {}
