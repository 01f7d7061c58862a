/**
 * From a shape file to a part. Read {@link org.bearingline.shape.ShapeLibrary} first, then {@link
 * org.bearingline.shape.ShapeReader}. Three types follow each other so that an unchecked shape
 * cannot be drawn: what was read, {@link org.bearingline.shape.CheckedShape}, {@link
 * org.bearingline.shape.MeasuredShape}. The format is described in {@code shapes/README.md}.
 */
package org.bearingline.shape;
