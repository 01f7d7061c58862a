/**
 * Reads SVG drawings. Start at {@link org.bearingline.outside.svg.SvgReader}: the XML becomes a
 * tree of {@link org.bearingline.outside.svg.SvgElement} without any other file being opened, the
 * walk over what can be seen turns elements into strokes. Numbers, paths, transforms and styles are
 * parsed by Batik, which keeps them as {@code float}: a coordinate is true to 6e-8 of itself.
 */
package org.bearingline.outside.svg;
