/**
 * Finds clear spots for words and dimensions, so that nothing is written across a line: {@link
 * org.bearingline.drawing.labels.LabelPlacer}.
 */
package org.bearingline.drawing.labels;
