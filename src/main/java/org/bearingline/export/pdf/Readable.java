package org.bearingline.export.pdf;

import org.bearingline.outline.Degrees;

/** Keeps words from standing on their heads: a base line runs to the right or straight up. */
final class Readable {

  private Readable() {}

  /** Whether a base line in this direction is to be turned about. */
  static boolean flips(double degrees) {
    double turn = Degrees.normalised(degrees);
    return turn > 90 + 1e-6 && turn <= 270 + 1e-6;
  }

  /** The direction, turned about where words would stand on their heads. */
  static double degrees(double degrees) {
    return Degrees.normalised(flips(degrees) ? degrees + 180 : degrees);
  }
}
