/**
 * Photos and scans of a template: decoded, set right by corner marks or by their dpi, parted into
 * template and ground, and traced between the pixels. Begin with {@link
 * org.bearingline.outside.scan.ScanReader}. Light is linear (as it falls on the sensor), not the
 * sRGB code of the file, wherever an edge is placed: a pixel half covered by the template has half
 * the light, not half the code.
 *
 * <p>Pixels count from the upper left corner, y downwards, their centres at whole numbers; what
 * leaves the room is in mm, y upwards.
 */
package org.bearingline.outside.scan;
