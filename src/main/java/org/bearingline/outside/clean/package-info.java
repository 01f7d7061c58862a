/**
 * Makes clean lines and arcs of a {@link org.bearingline.outside.Sketch}: strokes chained, doubled
 * ones dropped, free curves and chords fitted, loops nested, and a report of what was done. Read
 * {@link org.bearingline.outside.clean.Cleaning} first.
 */
package org.bearingline.outside.clean;
