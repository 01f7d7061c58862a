package org.bearingline.drawing.sheet;

import java.util.Objects;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What the pages are printed on and how.
 *
 * @param paper its size
 * @param margins what the printer leaves white
 * @param overlap mm that neighbouring pages share, 5 to 50
 * @param correction what the printer makes of 100 mm
 */
public record PaperChoice(
    Paper paper, Margins margins, double overlap, PrintCorrection correction) {

  public PaperChoice {
    Objects.requireNonNull(paper);
    Objects.requireNonNull(margins);
    Objects.requireNonNull(correction);
    if (!(overlap >= 5 && overlap <= 50)) {
      throw new Problem(Place.field("overlap"), "pages overlap by 5 mm to 50 mm, usually 12 mm");
    }
  }

  /** The usual margins and overlap. */
  public static PaperChoice of(Paper paper, PrintCorrection correction) {
    return new PaperChoice(paper, Margins.usual(), PaperTable.usual("overlap"), correction);
  }

  /** The same on a printer with other margins. */
  public PaperChoice withMargins(Margins others) {
    return new PaperChoice(paper, others, overlap, correction);
  }

  /** The same with another overlap, in mm. */
  public PaperChoice withOverlap(double mm) {
    return new PaperChoice(paper, margins, mm, correction);
  }
}
