package org.bearingline.outside.scan;

import java.util.OptionalDouble;

/**
 * What a picture's file says about it.
 *
 * @param dpiX pixels an inch along a row, if said
 * @param dpiY pixels an inch along a column, if said
 * @param orientation 1 to 8 as in TIFF 6.0, tag 274: how the rows lie
 * @param camera whether a camera made it, so that its dpi mean nothing
 * @param holdsMore whether other pictures follow the first
 */
record ImageFacts(
    OptionalDouble dpiX, OptionalDouble dpiY, int orientation, boolean camera, boolean holdsMore) {

  ImageFacts {
    if (orientation < 1 || orientation > 8) {
      throw new IllegalArgumentException("no such orientation: " + orientation);
    }
  }

  boolean saysDpi() {
    return dpiX.isPresent() && dpiY.isPresent();
  }
}
