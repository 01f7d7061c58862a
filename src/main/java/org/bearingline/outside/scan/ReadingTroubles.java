package org.bearingline.outside.scan;

import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;

/**
 * Hears what the platform's reader of JPEG murmurs while it fills with grey what a file lacks. Its
 * words are of two kinds: its own, and those of the library below it; neither has a code.
 */
final class ReadingTroubles implements IIOReadWarningListener {

  private boolean cutShort;
  private boolean damaged;

  @Override
  public void warningOccurred(ImageReader source, String warning) {
    if (warning.contains("Missing EOI") || warning.contains("premature end")) {
      cutShort = true;
    } else if (warning.contains("Corrupt JPEG data") && !warning.contains("extraneous bytes")) {
      damaged = true;
    }
  }

  /** The file ended before the picture did. */
  boolean isCutShort() {
    return cutShort;
  }

  /** Some of the picture could not be read. */
  boolean isDamaged() {
    return damaged;
  }
}
