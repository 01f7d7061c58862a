package org.bearingline.routing.setup;

import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** Figures of practice for setting up, read from their table. */
final class SetupPractice {

  private final FactTable table;

  private SetupPractice(FactTable table) {
    this.table = table;
  }

  static SetupPractice shipped() {
    return new SetupPractice(FactTable.read(SetupPractice.class, "setup.tsv"));
  }

  double mm(String rule) {
    return Length.parse(row(rule).text("value"));
  }

  double number(String rule) {
    return row(rule).number("value");
  }

  private FactRow row(String rule) {
    return table.rows().stream()
        .filter(row -> row.text("rule").equals(rule))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("setup.tsv has no rule " + rule));
  }
}
