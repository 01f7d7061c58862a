package org.bearingline.routing.setup;

import org.bearingline.routing.Practice;

/** Figures of practice for setting up. */
final class SetupPractice {

  private SetupPractice() {}

  /** The table that comes with the program. */
  static Practice shipped() {
    return Practice.of(SetupPractice.class, "setup.tsv");
  }
}
