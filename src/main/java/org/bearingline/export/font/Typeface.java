package org.bearingline.export.font;

import java.io.InputStream;

/** A weight of the shipped font. All sizes are of the em, in mm. */
public enum Typeface {
  REGULAR("OpenSans-Regular.ttf"),
  SEMIBOLD("OpenSans-Semibold.ttf");

  private final String file;

  Typeface(String file) {
    this.file = file;
  }

  /** The font file, for a writer that embeds it. */
  public InputStream open() {
    return Typeface.class.getResourceAsStream(file);
  }

  /** Width in mm of one line of text. */
  public double width(String text, double size) {
    throw new UnsupportedOperationException();
  }
}
