package org.bearingline.routing.operation;

import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** Figures of practice for operations, read from their table. */
public final class Facts {

  private final FactTable table;

  private Facts(FactTable table) {
    this.table = table;
  }

  /** The table that comes with the program. */
  public static Facts shipped() {
    return new Facts(FactTable.read(Facts.class, "facts.tsv"));
  }

  /** A length in mm. */
  public double mm(String rule) {
    return Length.parse(row(rule).text("value"));
  }

  private FactRow row(String rule) {
    for (FactRow row : table.rows()) {
      if (row.text("rule").equals(rule)) {
        return row;
      }
    }
    throw new IllegalStateException("facts.tsv has no rule " + rule);
  }
}
