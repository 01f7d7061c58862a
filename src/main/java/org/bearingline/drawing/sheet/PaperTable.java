package org.bearingline.drawing.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** The sizes of paper that have a name, and what is usual about printing. */
final class PaperTable {

  private PaperTable() {}

  /** All named papers, in the table's order. */
  static List<Paper> papers() {
    return FactTable.read(PaperTable.class, "papers.tsv").rows().stream()
        .map(PaperTable::paper)
        .toList();
  }

  /** The paper of that name; capitals, blanks, hyphens and underscores do not matter. */
  static Optional<Paper> find(String name) {
    String wanted = bare(name);
    return papers().stream().filter(paper -> bare(paper.name()).equals(wanted)).findFirst();
  }

  /** A usual measure of printing, in mm. */
  static double usual(String name) {
    return FactTable.read(PaperTable.class, "printing.tsv").rows().stream()
        .filter(row -> row.text("name").equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no usual measure is called " + name))
        .number("mm");
  }

  /** Whether a paper's sides are given in inches. */
  static boolean isInches(Paper paper) {
    String width =
        FactTable.read(PaperTable.class, "papers.tsv").rows().stream()
            .filter(row -> row.text("name").equals(paper.name()))
            .map(row -> row.text("width"))
            .findFirst()
            .orElse(paper.name());
    return width.matches(".*(in|ft|[\"'″′]).*");
  }

  private static Paper paper(FactRow row) {
    OptionalDouble height =
        row.has("height")
            ? OptionalDouble.of(Length.parse(row.text("height")))
            : OptionalDouble.empty();
    return new Paper(row.text("name"), Length.parse(row.text("width")), height);
  }

  private static String bare(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_:-]", "");
  }
}
