package org.bearingline.facts;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of facts: UTF-8 text, one row a line, columns parted by tabs (the media type
 * text/tab-separated-values), the first line naming the columns. Empty lines and lines that begin
 * with {@code #} are notes for people. Every table has a column {@code source}, filled in every
 * row: a fact without a source says so there.
 *
 * @param name the resource, for messages
 * @param columns in the file's order
 * @param rows in the file's order
 */
public record FactTable(String name, List<String> columns, List<FactRow> rows) {

  /** The column every table has. */
  public static final String SOURCE = "source";

  public FactTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Reads the resource {@code name} that stands in the package of {@code owner}, such as {@code
   * FactTable.read(Kit.class, "blades.tsv")}.
   */
  public static FactTable read(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the fact table " + name + " is missing");
      }
      return parse(name, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("the fact table " + name + " cannot be read", e);
    }
  }

  static FactTable parse(String name, BufferedReader text) throws IOException {
    List<String> columns = null;
    List<FactRow> rows = new ArrayList<>();
    int number = 0;
    for (String line = text.readLine(); line != null; line = text.readLine()) {
      number++;
      if (line.isBlank() || line.charAt(0) == '#') {
        continue;
      }
      List<String> cells = cells(line);
      if (columns == null) {
        columns = cells;
        if (!columns.contains(SOURCE)) {
          throw new IllegalStateException(name + " has no column " + SOURCE);
        }
        continue;
      }
      if (cells.size() != columns.size()) {
        throw new IllegalStateException(
            name + ":" + number + " has " + cells.size() + " cells, not " + columns.size());
      }
      FactRow row = new FactRow(name, number, columns, cells);
      row.source();
      rows.add(row);
    }
    if (columns == null) {
      throw new IllegalStateException(name + " is empty");
    }
    return new FactTable(name, columns, rows);
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int tab = line.indexOf('\t'); tab >= 0; tab = line.indexOf('\t', from)) {
      cells.add(line.substring(from, tab).strip());
      from = tab + 1;
    }
    cells.add(line.substring(from).strip());
    return cells;
  }
}
