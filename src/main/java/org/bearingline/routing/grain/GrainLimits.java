package org.bearingline.routing.grain;

import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** Limits of practice about grain, read from their table. */
final class GrainLimits {

  private final FactTable table;

  private GrainLimits(FactTable table) {
    this.table = table;
  }

  static GrainLimits shipped() {
    return new GrainLimits(FactTable.read(GrainLimits.class, "grain.tsv"));
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
        .orElseThrow(() -> new IllegalStateException("grain.tsv has no rule " + rule));
  }
}
