/**
 * Outlines drawn elsewhere. A reader (one room per format: {@code svg}, {@code dxf}, {@code scan})
 * makes a {@link org.bearingline.outside.Sketch} of a file; {@code clean} makes clean lines and
 * arcs of a sketch. Nothing a file says makes a reader open another file or the network.
 */
package org.bearingline.outside;
