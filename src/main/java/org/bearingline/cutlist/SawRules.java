package org.bearingline.cutlist;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * How the shop saws boards up.
 *
 * @param kerf mm the saw takes between two pieces, 0 or more
 * @param trim mm taken off each of the four edges of a board first, 0 or more
 * @param planing mm by which a board may be thicker than its blank and is planed down, 0 or more
 */
public record SawRules(double kerf, double trim, double planing) {

  /** Thicknesses nearer than this, in mm, are the same: 1/64 in, what a planer is set to. */
  static final double SAME_THICKNESS = 0.4;

  /** An eighth of an inch: a table saw's full-kerf blade; common practice. */
  private static final double USUAL_KERF = 3.175;

  /**
   * Rough boards are sold in quarters of an inch and surface to 3/16 or 1/4 in less (1 in to 13/16,
   * 2 in to 1-3/4): common practice.
   */
  private static final double USUAL_PLANING = 6.35;

  /** mm; a chain saw's, which is no saw for furniture any more. */
  private static final double WIDEST_KERF = 12.7;

  public SawRules {
    Sizes.checkOrZero("kerf", kerf);
    if (kerf > WIDEST_KERF) {
      throw new Problem(
          Place.field("kerf"),
          "no saw takes more than 1/2 in (12.7 mm) between two pieces; give the width of its cut,"
              + " often 1/8in or 3mm");
    }
    Sizes.checkOrZero("trim", trim);
    Sizes.checkOrZero("planing", planing);
  }

  /** A full-kerf table-saw blade and boards with clean edges. */
  public static SawRules usual() {
    return new SawRules(USUAL_KERF, 0, USUAL_PLANING);
  }
}
