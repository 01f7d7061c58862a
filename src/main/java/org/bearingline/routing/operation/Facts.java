package org.bearingline.routing.operation;

import org.bearingline.routing.Practice;

/** Figures of practice for operations, read from their table. */
public final class Facts {

  private Facts() {}

  /** The table that comes with the program. */
  public static Practice shipped() {
    return Practice.of(Facts.class, "facts.tsv");
  }
}
