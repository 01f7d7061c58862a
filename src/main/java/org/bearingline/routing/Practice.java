package org.bearingline.routing;

import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** A table of rules of practice, each a length or a number with its source. */
public final class Practice {

  private final FactTable table;

  private Practice(FactTable table) {
    this.table = table;
  }

  /** The limits of cutting practice. */
  static Practice shipped() {
    return of("practice.tsv");
  }

  static Practice of(String table) {
    return of(Practice.class, table);
  }

  /** The table of that name that stands in the package of {@code owner}. */
  public static Practice of(Class<?> owner, String table) {
    return new Practice(FactTable.read(owner, table));
  }

  /** A length in mm. */
  public double mm(String rule) {
    return Length.parse(row(rule).text("value"));
  }

  /** A length in mm, round in the units of the reader: half, whole or ten millimetres, not more. */
  public double mm(String rule, Units units) {
    double mm = mm(rule);
    if (units == Units.INCH) {
      return mm;
    }
    double step = mm < 10 ? 0.5 : mm < 100 ? 1 : 10;
    return Math.max(step, Math.floor(mm / step + 1e-9) * step);
  }

  public double number(String rule) {
    return row(rule).number("value");
  }

  public String source(String rule) {
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
