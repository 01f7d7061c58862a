package org.bearingline.export.pdf;

import org.bearingline.length.Units;

/** Writes the card for the shop wall. */
public final class CardPdf {

  private CardPdf() {}

  /** The file's bytes; {@code units} are those of the dimensions' words. */
  public static byte[] write(Card card, Units units) {
    throw new UnsupportedOperationException();
  }
}
