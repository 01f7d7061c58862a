package org.bearingline.routing.grain;

import org.bearingline.routing.Practice;

/** Limits of practice about grain. */
final class GrainLimits {

  private GrainLimits() {}

  /** The table that comes with the program. */
  static Practice shipped() {
    return Practice.of(GrainLimits.class, "grain.tsv");
  }
}
