/**
 * Values of plane geometry: points, straight lines, circular arcs, loops and outlines. Millimetres
 * and degrees, x right, y up; outer loops counter-clockwise, openings clockwise, wood on the left.
 * Read {@link org.bearingline.outline.Primitive} first, then {@link
 * org.bearingline.outline.Outline}.
 */
package org.bearingline.outline;
