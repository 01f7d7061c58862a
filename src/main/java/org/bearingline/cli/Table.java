package org.bearingline.cli;

import java.util.List;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.TextTable;
import picocli.CommandLine.Model.CommandSpec;

/** Prints rows in columns as wide as their widest cell; the last column wraps. */
final class Table {

  private static final int GAP = 2;

  private static final int NARROWEST_LAST = 30;

  private Table() {}

  static void print(CommandSpec spec, List<String> heads, List<List<String>> rows) {
    int columns = heads.size();
    Column[] layout = new Column[columns];
    int used = 0;
    for (int i = 0; i < columns; i++) {
      int width = heads.get(i).length();
      for (List<String> row : rows) {
        width = Math.max(width, row.get(i).length());
      }
      if (i == columns - 1) {
        int rest = spec.usageMessage().width() - used - GAP;
        layout[i] = new Column(Math.max(NARROWEST_LAST, rest), GAP, Column.Overflow.WRAP);
      } else {
        int indent = i == 0 ? 0 : GAP;
        layout[i] = new Column(width + indent, indent, Column.Overflow.SPAN);
        used += width + indent;
      }
    }
    TextTable table = TextTable.forColumns(spec.commandLine().getColorScheme(), layout);
    String[] bold = new String[columns];
    for (int i = 0; i < columns; i++) {
      bold[i] = "@|bold " + heads.get(i) + "|@";
    }
    Ansi ansi = spec.commandLine().getColorScheme().ansi();
    Ansi.Text[] texts = new Ansi.Text[columns];
    for (int i = 0; i < columns; i++) {
      texts[i] = ansi.new Text(bold[i], spec.commandLine().getColorScheme());
    }
    table.addRowValues(texts);
    for (List<String> row : rows) {
      table.addRowValues(row.toArray(String[]::new));
    }
    spec.commandLine().getOut().println(table.toString().stripTrailing());
  }
}
