package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Passes;
import org.bearingline.routing.RoughLine;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;
import org.bearingline.shape.Design;

/** Says on paper what the maker needs to know of one part. */
final class Cards {

  private static final String NOTHING_ROUTED =
      "No edge of this part follows a template: saw and plane it to its line.";

  /** More passes than this are told as so many equal ones. */
  private static final int MOST_LISTED = 3;

  private Cards() {}

  static Card card(WorkedPart worked, List<Plate> plates, Units units) {
    RoutingResult result = worked.result();
    return new Card(
        PlateSections.title(worked),
        result.part().about(),
        plates.get(0).cardPicture(units),
        table(worked, units),
        sections(worked, plates, units),
        result.cautions(),
        others(plates, units),
        Settings.paper(worked.order().wishes()).paper());
  }

  /** The plates after the first, each with what it makes. */
  private static List<Card.Picture> others(List<Plate> plates, Units units) {
    List<Card.Picture> pictures = new ArrayList<>();
    for (Plate plate : plates.subList(1, plates.size())) {
      String heading = plate.template().map(Template::title).orElse("");
      pictures.add(new Card.Picture(Words.capital(heading), plate.cardPicture(units)));
    }
    return pictures;
  }

  /** A table as wide as the page, where the part has one. */
  static Optional<Card.Section> table(WorkedPart worked, Units units) {
    return worked
        .whole()
        .map(operations -> new WholeCard(worked, operations, units))
        .flatMap(WholeCard::table)
        .or(() -> seats(worked, units));
  }

  /** What is said of the part, in the order it is wanted. */
  static List<Card.Section> sections(WorkedPart worked, List<Plate> plates, Units units) {
    RoutingResult result = worked.result();
    Optional<WholeCard> whole =
        worked.whole().map(operations -> new WholeCard(worked, operations, units));
    List<Card.Section> sections = new ArrayList<>();
    if (worked.order().shape() instanceof PanelDesign panel) {
      sections.add(PanelSection.words(panel, units));
    }
    sections.addAll(PlateSections.of(worked));
    boolean isRouted = whole.isPresent() || !result.templates().isEmpty();
    if (whole.isPresent()) {
      sections.addAll(whole.get().sections());
    } else if (isRouted) {
      sections.add(tool(worked, units));
    } else {
      sections.add(Card.Section.of("Work", List.of(NOTHING_ROUTED)));
    }
    if (isRouted) {
      sections.add(HoldingSection.of(worked, plates, units));
    }
    if (isRouted && (whole.isEmpty() || !result.reach().leftovers().isEmpty())) {
      sections.add(reach(result, units));
    }
    result.roughLine().ifPresent(line -> sections.add(saw(line, units)));
    if (whole.isEmpty()) {
      result.passes().ifPresent(passes -> sections.add(passes(worked, passes, units)));
    }
    if (isRouted) {
      worked.grain().flatMap(grain -> GrainSection.of(grain, units)).ifPresent(sections::add);
    }
    if (worked.order().shape() instanceof DrawnDesign design) {
      sections.add(DrawnWords.section(design, units));
    } else if (!worked.order().shape().settings().isEmpty()) {
      sections.add(measures(worked, units));
    }
    if (!result.part().notes().isEmpty()) {
      sections.add(Card.Section.of("Notes", result.part().notes()));
    }
    return sections;
  }

  private static Optional<Card.Section> seats(WorkedPart worked, Units units) {
    return worked.order().shape() instanceof PanelDesign panel
        ? Optional.of(PanelSection.seats(panel, units))
        : Optional.empty();
  }

  private static Card.Section tool(WorkedPart worked, Units units) {
    RoutingResult result = worked.result();
    List<String> lines = new ArrayList<>();
    lines.add(Words.tool(result.settings(), units) + ".");
    for (Template template : result.templates()) {
      lines.add(template(template, units));
      lines.addAll(template.notes());
    }
    result
        .proof()
        .ifPresent(
            proof ->
                lines.add(
                    "Played forward, the template is "
                        + LayoutWords.proof(proof.maxDeviation(), units)
                        + "."));
    return Card.Section.of("Bit and template", lines);
  }

  /** “Template 2, ledge: its opening is …”. */
  private static String template(Template template, Units units) {
    return Words.capital(template.title().replace(": ", ", ")) + ": " + offset(template, units);
  }

  static String offset(Template template, Units units) {
    double offset = template.offset();
    if (Math.abs(offset) < 1e-9) {
      return "its edge is the part's own line.";
    }
    String distance = Length.print(Math.abs(offset), units);
    boolean openings = template.serves().stream().anyMatch(edge -> !isOutside(edge));
    boolean outside = template.serves().stream().anyMatch(Cards::isOutside);
    List<String> said = new ArrayList<>();
    if (outside) {
      said.add(
          "its edge lies " + distance + (offset < 0 ? " inside" : " outside") + " the part's line");
    }
    if (openings) {
      said.add(
          "its opening is "
              + distance
              + (offset < 0 ? " larger" : " smaller")
              + " all round than the part's");
    }
    return String.join("; ", said) + ".";
  }

  private static boolean isOutside(String edge) {
    return edge.equals(Template.OUTSIDE_EDGE);
  }

  private static Card.Section reach(RoutingResult result, Units units) {
    List<String> lines = new ArrayList<>();
    StringBuilder said =
        new StringBuilder(Words.capital(ReachWords.largest(result.largestCutter(), units)));
    if (!result.bits().isEmpty()) {
      List<String> sizes = new ArrayList<>();
      for (var bit : result.bits()) {
        String size = Length.print(bit.diameter(), units);
        if (!sizes.contains(size)) {
          sizes.add(size);
        }
      }
      said.append(" Of the kit: ").append(String.join(", ", sizes)).append('.');
    }
    if (result.reach().leftovers().isEmpty()) {
      lines.add(said + " This bit leaves nothing.");
      return Card.Section.of("Reach", lines);
    }
    lines.add(said.toString());
    lines.add("Pare these by hand, or change to a thinner bit:");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("no.", "where", "depth", "inside radius"));
    for (Leftover leftover : result.reach().leftovers()) {
      rows.add(
          List.of(
              String.valueOf(leftover.number()),
              leftover.kind().word(),
              Words.small(leftover.depth(), units),
              leftover.insideRadius() == 0
                  ? "sharp"
                  : Length.print(leftover.insideRadius(), units)));
    }
    return new Card.Section("Reach", lines, rows);
  }

  static Card.Section saw(RoughLine line, Units units) {
    List<String> lines = new ArrayList<>();
    String stays =
        "at least " + Length.printAtMost(line.allowance(), units) + " stays for the bit.";
    if (!line.paths().isEmpty()) {
      String blade =
          line.blade()
              .map(
                  saw ->
                      " with a "
                          + Length.print(saw.width(), units)
                          + " blade (turns down to R "
                          + Length.print(saw.smallestRadius(), units)
                          + ")")
              .orElse("");
      lines.add("Saw to the rough line" + blade + ": " + stays);
    } else if (!line.openings().isEmpty()) {
      lines.add("Saw to the rough line inside the opening: " + stays);
    }
    double deepest = 0;
    List<String> numbers = new ArrayList<>();
    for (RoughLine.Bridge bridge : line.bridged()) {
      if (bridge.extraDepth() > PartLabels.WORTH_A_WORD) {
        numbers.add(String.valueOf(bridge.number()));
        deepest = Math.max(deepest, bridge.extraDepth());
      }
    }
    if (!numbers.isEmpty()) {
      lines.add(
          "The blade cannot follow the hollows marked "
              + String.join(", ", numbers)
              + ": the bit takes up to "
              + Length.print(line.allowance() + deepest, units)
              + " there, so nibble them out or take light cuts.");
    }
    lines.addAll(line.notes());
    return Card.Section.of("Rough line", lines);
  }

  private static Card.Section passes(WorkedPart worked, Passes passes, Units units) {
    List<String> depths = new ArrayList<>();
    for (double depth : passes.depths()) {
      depths.add(Length.print(depth, units));
    }
    int count = depths.size();
    String said =
        count > MOST_LISTED
            ? count
                + " passes of "
                + Length.print(passes.perPass(), units)
                + (passes.isEven() ? ", the last " : ", the first less, the last ")
                + depths.get(count - 1)
                + " below the face. "
            : String.join(", ", depths) + " below the face. ";
    List<String> lines = new ArrayList<>(List.of(said + passes.rule()));
    lines.addAll(worked.setUp());
    return Card.Section.of("Depth of the passes", lines);
  }

  private static Card.Section measures(WorkedPart worked, Units units) {
    List<String> said = new ArrayList<>();
    Design shape = worked.order().shape();
    Map<String, Double> lengths = shape.lengths();
    shape
        .settings()
        .forEach(
            (name, written) -> {
              Double mm = lengths.get(name);
              String value = mm == null ? written : Length.print(mm, units);
              said.add(name.replace('_', ' ') + " " + value);
            });
    return Card.Section.of("Measures", List.of(String.join(", ", said) + "."));
  }

  /** Short sentences for the foot of each sheet, which says itself how to print and join it. */
  static List<String> sheetNotes(Plate plate, Units units) {
    if (plate.worked().whole().isPresent()) {
      return WholePlates.notes(plate, units);
    }
    RoutingResult result = plate.result();
    return List.of("For a " + Words.tool(result.settings(), units) + ".");
  }
}
