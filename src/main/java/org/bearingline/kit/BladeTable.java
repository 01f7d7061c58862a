package org.bearingline.kit;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Band-saw blade widths and the smallest radius each turns: the largest of the published tables.
 *
 * <p>A width that stands in the table has its row's radius. Between two rows the radius runs
 * straight from one to the next, which is the safe side: the tables grow about as the square of the
 * width, and a chord of such a curve lies above it. A wider blade never gets a tighter radius than
 * a narrower one. Below the narrowest row its radius holds; above the widest nothing is known.
 */
public final class BladeTable {

  /** A width this near to a row, in mm, is that row: less than a blade's own tolerance. */
  private static final double SAME_WIDTH = 0.01;

  private final List<Row> rows;

  private BladeTable(List<Row> rows) {
    this.rows = List.copyOf(rows);
  }

  /**
   * One width of the table.
   *
   * @param width mm
   * @param smallestRadius mm, the largest of the published figures
   * @param usual whether the blade belongs to the usual kit
   * @param source where the figures come from
   */
  public record Row(double width, double smallestRadius, boolean usual, String source) {}

  /** The table that comes with the program. */
  public static BladeTable shipped() {
    List<Row> rows = new ArrayList<>();
    for (FactRow fact : FactTable.read(BladeTable.class, "blades.tsv").rows()) {
      double radius = 0;
      for (String column : List.of("radius-a", "radius-b", "radius-c")) {
        if (fact.has(column)) {
          radius = Math.max(radius, Length.parse(fact.text(column)));
        }
      }
      rows.add(new Row(Length.parse(fact.text("width")), radius, fact.has("usual"), fact.source()));
    }
    return new BladeTable(rows);
  }

  /** By growing width. */
  public List<Row> rows() {
    return rows;
  }

  /**
   * The smallest radius in mm that a blade of {@code width} mm turns; fails with a Problem above
   * the widest blade of the table.
   */
  public double smallestRadius(double width) {
    if (!(width > 0)) {
      throw new Problem(Place.field("blade"), "a saw blade needs a width above 0");
    }
    double before = rows.get(0).width();
    double radius = 0;
    for (Row row : rows) {
      if (Math.abs(width - row.width()) <= SAME_WIDTH) {
        return row.smallestRadius();
      }
      double next = Math.max(radius, row.smallestRadius());
      if (width < row.width()) {
        return radius == 0
            ? next
            : radius + (next - radius) * (width - before) / (row.width() - before);
      }
      before = row.width();
      radius = next;
    }
    throw new Problem(
        Place.field("blade"),
        "no smallest radius is known for a blade wider than "
            + Length.print(before, Units.INCH)
            + "; give the radius yourself in the kit file");
  }
}
