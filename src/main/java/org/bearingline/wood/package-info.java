/**
 * How wood takes up moisture from the air and how much wider or narrower that makes it: {@link
 * org.bearingline.wood.Air} gives a moisture content, {@link org.bearingline.wood.MoistureRange}
 * the least and most of a year, {@link org.bearingline.wood.Movement} the change of a width.
 * Moisture contents and humidities are in percent, widths in mm.
 */
package org.bearingline.wood;
