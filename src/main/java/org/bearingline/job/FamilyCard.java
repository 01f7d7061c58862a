package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.Registration;

/** The card of a template that serves several parts. */
final class FamilyCard {

  private final FamilyPlate plate;
  private final Family family;
  private final Units units;

  private FamilyCard(FamilyPlate plate) {
    this.plate = plate;
    this.family = plate.family();
    this.units = plate.units();
  }

  /**
   * @param members the parts it serves, in the family's order
   */
  static Card of(FamilyPlate plate, List<WorkedPart> members, Paper paper) {
    return new FamilyCard(plate).card(members, paper);
  }

  private Card card(List<WorkedPart> members, Paper paper) {
    List<Card.Section> sections = new ArrayList<>();
    List<String> how = new ArrayList<>(family.sentences().subList(0, 1));
    how.addAll(JobFamilyWords.how(family));
    sections.add(Card.Section.of("One template for all", how));
    sections.add(
        Card.Section.of(
            "Laying the parts to it",
            family.members().stream().map(FamilyMember::sentence).toList()));
    sections.add(Card.Section.of("Bits", members.stream().map(this::bit).toList()));
    sections.add(new Card.Section("Where its lines stand", List.of(fromLeft()), rows()));
    return new Card(
        plate.name(),
        "Template of " + JobFamilyWords.names(family),
        plate.cardPicture(),
        Optional.empty(),
        sections,
        List.of(
            "Each part's own card tells its passes, feed and grain. Hold down template and work"
                + " before each setting, and unplug or lock the router while they are moved."),
        paper);
  }

  private String bit(WorkedPart worked) {
    return worked.order().name()
        + ": "
        + Words.tool(
            worked.result().settings().cutter(), worked.result().settings().follower(), units)
        + ".";
  }

  private String fromLeft() {
    return "From the left end of the plate, and for backs from its lowest edge, as drawn.";
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "at"));
    for (Registration line : family.registration()) {
      double at =
          line.kind() == Registration.Kind.BACK
              ? line.from().y() - family.plate().bounds().minY()
              : line.from().x() - family.plate().bounds().minX();
      rows.add(List.of(line.label(), Length.print(at, units)));
    }
    return rows;
  }
}
