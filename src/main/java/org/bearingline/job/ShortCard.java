package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.family.Setting;
import org.bearingline.routing.family.SharedCurve;

/** The card of a short template, which makes one curve wherever it stands. */
final class ShortCard {

  private ShortCard() {}

  /**
   * @param members the parts it serves
   */
  static Card of(FamilyPlate plate, SharedCurve curve, List<WorkedPart> members, Paper paper) {
    List<Card.Section> sections = new ArrayList<>();
    WorkedPart host =
        members.stream()
            .filter(worked -> worked.order().name().equals(curve.host()))
            .findFirst()
            .orElseThrow();
    List<String> edge =
        host.result().templates().stream()
            .filter(HalfPlate::isForEdge)
            .map(template -> "Template: " + Cards.offset(template, plate.units()))
            .toList();
    List<String> how = new ArrayList<>(edge);
    how.add(
        "Mark on each part where the curve begins, as the table says. Lay the line “curve begins”"
            + " to the mark and the template's straight edge along the part's own, then clamp it.");
    how.add(curve.sentences().get(curve.sentences().size() - 1));
    sections.add(Card.Section.of("One curve in many places", how));
    sections.add(
        Card.Section.of(
            "Bits", members.stream().map(worked -> bit(worked, plate.units())).toList()));
    return new Card(
        plate.name(),
        "Short template of " + Words.list(plate.parts()),
        plate.cardPicture(),
        Optional.of(Card.Section.table("Where the curve begins", rows(curve, plate.units()))),
        sections,
        List.of(
            "Each part's own card tells its passes, feed and grain. Hold down template and work"
                + " before each setting, and unplug or lock the router while they are moved.",
            "A short template carries little of the router: keep its weight on the side that is"
                + " held, or lay a strip of the template's thickness beside it."),
        paper);
  }

  static String bit(WorkedPart worked, Units units) {
    return worked.order().name() + ": " + Words.tool(worked.result().settings(), units) + ".";
  }

  private static List<List<String>> rows(SharedCurve curve, Units units) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("part", "how it lies", "from its left end", "from its back"));
    for (SharedCurve.Use use : curve.uses()) {
      rows.add(
          List.of(
              use.part(),
              lay(use.setting()),
              Length.print(use.fromEnd(), units),
              Length.print(use.fromBack(), units)));
    }
    return rows;
  }

  private static String lay(Setting setting) {
    return setting.lay().words();
  }

  /** On the card of a part whose edge short templates make. */
  static List<String> onCard(PlateWay.Short way) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "The curves of the edge come from "
            + Words.list(way.names())
            + ", laid to each place in turn: sheets, drawing and card are "
            + way.names().get(0)
            + ".*; this part has none of its own.");
    lines.addAll(way.sentences());
    return lines;
  }
}
