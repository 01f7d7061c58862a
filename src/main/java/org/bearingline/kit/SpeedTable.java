package org.bearingline.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** The fastest a bit may turn, by its diameter: the lowest of the published ceilings. */
public final class SpeedTable {

  /** Room for rounding when a diameter given in mm is compared with an inch limit. */
  private static final double ROUNDING = 1e-6;

  private SpeedTable() {}

  /**
   * One step of the table.
   *
   * @param upTo diameter in mm, this one included
   * @param ceiling revolutions a minute not to be passed
   * @param startAt gentler speed to begin with for the largest diameter of the step
   * @param source where the figures come from
   */
  public record Row(double upTo, int ceiling, int startAt, String source) {}

  /** By growing diameter. */
  public static List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (FactRow fact : FactTable.read(SpeedTable.class, "speeds.tsv").rows()) {
      rows.add(
          new Row(
              Length.parse(fact.text("up-to")),
              (int) Math.min(fact.number("table-1"), fact.number("table-2")),
              (int) fact.number("start-at"),
              fact.source()));
    }
    return rows;
  }

  /**
   * Revolutions a minute that a bit of {@code diameter} mm must not pass; empty above the largest
   * diameter of the table, where only the tool's own marking tells.
   */
  public static OptionalInt ceiling(double diameter) {
    for (Row row : rows()) {
      if (diameter <= row.upTo() + ROUNDING) {
        return OptionalInt.of(row.ceiling());
      }
    }
    return OptionalInt.empty();
  }
}
