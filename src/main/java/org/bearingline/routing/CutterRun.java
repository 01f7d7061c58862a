package org.bearingline.routing;

import org.bearingline.outline.Path;

/**
 * The path of the cutter's centre along one edge, wood on the left.
 *
 * @param edge {@link Template#OUTSIDE_EDGE} or the cavity's name
 * @param path with its run-out
 */
public record CutterRun(String edge, Path path) {}
