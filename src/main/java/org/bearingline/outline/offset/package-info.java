/**
 * Offsets of outlines: dilation, erosion, closing, opening and overlay, exact in lines and arcs.
 */
package org.bearingline.outline.offset;
