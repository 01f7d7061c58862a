package org.bearingline.drawing.sheet;

/**
 * The rim a printer leaves white.
 *
 * @param side mm at the sides and the head of the paper
 * @param foot mm at the end that leaves the printer last
 */
public record Margins(double side, double foot) {

  /** The same margin all round, in mm. */
  public static Margins all(double margin) {
    return new Margins(margin, margin);
  }
}
