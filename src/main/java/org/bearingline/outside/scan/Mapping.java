package org.bearingline.outside.scan;

import org.bearingline.outline.Point;

/** Leads from a place of the picture to the plane of the template's face. */
interface Mapping {

  /** The place in mm, y upwards, of a place in pixels, y downwards. */
  Point toMm(double x, double y);

  /** How large a pixel is at a place of the picture: mm, the mean of both ways. */
  default double pixelAt(double x, double y) {
    Point here = toMm(x, y);
    Point right = toMm(x + 1, y).minus(here);
    Point down = toMm(x, y + 1).minus(here);
    return Math.sqrt(Math.abs(right.cross(down)));
  }
}
