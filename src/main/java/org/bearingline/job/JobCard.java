package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.cutlist.Blank;
import org.bearingline.cutlist.CutBoard;
import org.bearingline.cutlist.Placement;
import org.bearingline.cutlist.SawCut;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** The card of a whole job: what to saw out, and from which board. */
final class JobCard {

  private final JobCuts cuts;
  private final List<String> families;
  private final Units units;

  private JobCard(JobCuts cuts, List<String> families, Units units) {
    this.cuts = cuts;
    this.families = List.copyOf(families);
    this.units = units;
  }

  /**
   * @param families what is said of parts that share a curve
   */
  static Card card(JobCuts cuts, List<String> families, Units units, Paper paper) {
    return new JobCard(cuts, families, units).card(paper);
  }

  private Card card(Paper paper) {
    List<Card.Section> sections = new ArrayList<>();
    sections.add(Card.Section.of("Amounts", cuts.list().sentences()));
    if (!families.isEmpty()) {
      sections.add(Card.Section.of("Parts that share a curve", families));
    }
    List<String> said = new ArrayList<>(cuts.notes());
    cuts.packing().ifPresent(packing -> said.addAll(0, packing.sentences()));
    if (!said.isEmpty()) {
      sections.add(Card.Section.of("Boards", said));
    }
    cuts.packing()
        .ifPresent(packing -> packing.boards().forEach(board -> sections.add(board(board))));
    return new Card(
        cuts.name(),
        "Cut list" + (cuts.packing().isPresent() ? " and layout on the boards" : ""),
        CuttingPicture.of(cuts, units),
        Optional.of(new Card.Section("Cut list", List.of(), rows())),
        sections,
        List.of(
            "Joint one edge and one face of each blank before it is ripped; keep short and narrow"
                + " pieces long until the last cut, and use guard, riving knife and push stick."),
        paper);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("no.", "piece", "quantity", "length", "width", "thickness", "from", "grain"));
    List<Blank> all = cuts.list().all();
    for (Blank blank : all) {
      rows.add(
          List.of(
              String.valueOf(all.indexOf(blank) + 1),
              blank.name(),
              String.valueOf(blank.quantity()),
              Length.printAtLeast(blank.length(), units),
              Length.printAtLeast(blank.width(), units),
              blank.thickness().isPresent()
                  ? Length.print(blank.thickness().getAsDouble(), units)
                  : "",
              blank.material().orElse("any sheet"),
              blank.mayTurn() ? "either way" : "along"));
    }
    return rows;
  }

  private Card.Section board(CutBoard cut) {
    List<String> pieces = new ArrayList<>();
    for (Placement placement : cut.placements()) {
      pieces.add(
          (cuts.list().all().indexOf(placement.blank()) + 1) + " " + placement.blank().name());
    }
    List<String> lines = new ArrayList<>();
    lines.add("Gives " + String.join(", ", pieces) + ".");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("cut", "how", "fence at", "of the piece"));
    for (SawCut saw : cut.cuts()) {
      rows.add(
          List.of(
              String.valueOf(saw.number()),
              saw.direction() == SawCut.Direction.RIP ? "rip" : "crosscut",
              Length.print(saw.setting(), units),
              size(saw.piece().width(), saw.piece().height())));
    }
    return new Card.Section(title(cut, units), lines, cut.cuts().isEmpty() ? List.of() : rows);
  }

  private String size(double length, double width) {
    return Length.print(length, units) + " × " + Length.print(width, units);
  }

  /** A board with its size; numbered where there are several alike. */
  static String title(CutBoard cut, Units units) {
    return cut.board().name()
        + (cut.board().quantity() > 1 ? " " + cut.number() : "")
        + ", "
        + Length.print(cut.board().length(), units)
        + " × "
        + Length.print(cut.board().width(), units);
  }
}
