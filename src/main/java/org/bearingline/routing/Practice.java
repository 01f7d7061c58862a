package org.bearingline.routing;

import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** Limits of cutting practice, read from their table. */
final class Practice {

  private final FactTable table;

  private Practice(FactTable table) {
    this.table = table;
  }

  static Practice shipped() {
    return of("practice.tsv");
  }

  static Practice of(String table) {
    return new Practice(FactTable.read(Practice.class, table));
  }

  double mm(String rule) {
    return Length.parse(row(rule).text("value"));
  }

  double number(String rule) {
    return row(rule).number("value");
  }

  String source(String rule) {
    return row(rule).source();
  }

  private FactRow row(String rule) {
    for (FactRow row : table.rows()) {
      if (row.text("rule").equals(rule)) {
        return row;
      }
    }
    throw new IllegalStateException(table.name() + " has no rule " + rule);
  }
}
