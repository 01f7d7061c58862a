package org.bearingline.drawing.sheet;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The rim a printer leaves white.
 *
 * @param side mm at the long sides of the paper and at its head, 0 or more
 * @param foot mm at the end that leaves the printer last, 0 or more
 */
public record Margins(double side, double foot) {

  public Margins {
    if (!(side >= 0 && foot >= 0) || !Double.isFinite(side + foot)) {
      throw new Problem(
          Place.field("margin"), "a printer's margin is 0 or more; give a length such as 6mm");
    }
  }

  /** The same margin all round, in mm; fails with a Problem where it is negative. */
  public static Margins all(double margin) {
    return new Margins(margin, margin);
  }

  /** Safe on most printers. */
  public static Margins usual() {
    return new Margins(
        PaperTable.usual("margin at the sides"), PaperTable.usual("margin at the foot"));
  }
}
