package org.bearingline.facts;

import java.util.List;

/**
 * One row of a {@link FactTable}.
 *
 * @param table the table's name, for messages
 * @param line where the row stands in the file, from 1
 * @param columns names of the cells
 * @param cells one for each column; empty where nothing is known
 */
public record FactRow(String table, int line, List<String> columns, List<String> cells) {

  /** The text of a cell; fails where it is empty. */
  public String text(String column) {
    String cell = cell(column);
    if (cell.isEmpty()) {
      throw new IllegalStateException(table + ":" + line + " leaves " + column + " empty");
    }
    return cell;
  }

  /** Whether the cell says anything. */
  public boolean has(String column) {
    return !cell(column).isEmpty();
  }

  /** The cell as a plain number such as {@code 24000} or {@code 0.5}. */
  public double number(String column) {
    try {
      return Double.parseDouble(text(column));
    } catch (NumberFormatException e) {
      throw new IllegalStateException(table + ":" + line + " has no number in " + column, e);
    }
  }

  /** Where the fact comes from. */
  public String source() {
    return text(FactTable.SOURCE);
  }

  private String cell(String column) {
    int at = columns.indexOf(column);
    if (at < 0) {
      throw new IllegalStateException(table + " has no column " + column);
    }
    return cells.get(at);
  }
}
