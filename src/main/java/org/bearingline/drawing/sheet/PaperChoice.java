package org.bearingline.drawing.sheet;

/**
 * What the pages are printed on and how.
 *
 * @param paper its size
 * @param margins what the printer leaves white
 * @param overlap mm that neighbouring pages share
 * @param correction what the printer makes of 100 mm
 */
public record PaperChoice(
    Paper paper, Margins margins, double overlap, PrintCorrection correction) {

  /** The usual margins and overlap. */
  public static PaperChoice of(Paper paper, PrintCorrection correction) {
    throw new UnsupportedOperationException();
  }
}
