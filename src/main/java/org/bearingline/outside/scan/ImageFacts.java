package org.bearingline.outside.scan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What a picture's file says about it.
 *
 * @param dpiX pixels an inch along a row, if said
 * @param dpiY pixels an inch along a column, if said
 * @param orientation 1 to 8 as in TIFF 6.0, tag 274: how the rows lie
 * @param camera whether a camera made it, so that its dpi mean nothing
 * @param holdsMore whether other pictures follow the first
 * @param contradiction in words, where the file says two different dpi
 * @param inksAsColours whether a picture of four inks has three of them turned into light and
 *     colours, as JPEG does with red, green and blue
 */
record ImageFacts(
    OptionalDouble dpiX,
    OptionalDouble dpiY,
    int orientation,
    boolean camera,
    boolean holdsMore,
    Optional<String> contradiction,
    boolean inksAsColours) {

  ImageFacts {
    if (orientation < 1 || orientation > 8) {
      throw new IllegalArgumentException("no such orientation: " + orientation);
    }
  }

  /** Whether the rows lie as in a mirror. */
  boolean isMirrored() {
    return orientation == 2 || orientation == 4 || orientation == 5 || orientation == 7;
  }

  /** The same of the picture with left and right of its rows exchanged. */
  ImageFacts ofMirrored() {
    int[] exchanged = {2, 1, 4, 3, 8, 7, 6, 5};
    return new ImageFacts(
        dpiX, dpiY, exchanged[orientation - 1], camera, holdsMore, contradiction, inksAsColours);
  }

  /** Whether the dpi are those that programs write which know of none. */
  boolean saysUsualDpi() {
    return saysDpi()
        && DoubleStream.of(72, 96)
            .anyMatch(usual -> Math.abs(dpiX.getAsDouble() - usual) < 0.1 && sameBothWays());
  }

  private boolean sameBothWays() {
    return Math.abs(dpiX.getAsDouble() - dpiY.getAsDouble()) < 0.1;
  }

  boolean saysDpi() {
    return dpiX.isPresent() && dpiY.isPresent();
  }
}
