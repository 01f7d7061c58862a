package org.bearingline.drawing;

/** How wide words are in the font that will draw them; this room knows no font. */
@FunctionalInterface
public interface TextWidth {

  /**
   * Width in mm of one line of text.
   *
   * @param text the words
   * @param height size of the font, its em, in mm
   */
  double of(String text, double height);
}
