package org.bearingline.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.Registration;

/** The card of a template that serves several parts. */
final class FamilyCard {

  private final FamilyPlate plate;
  private final Family family;
  private final Units units;

  private FamilyCard(FamilyPlate plate, Family family) {
    this.plate = plate;
    this.family = family;
    this.units = plate.units();
  }

  /**
   * @param members the parts it serves, in the family's order
   */
  static Card of(FamilyPlate plate, Family family, List<WorkedPart> members, Paper paper) {
    return new FamilyCard(plate, family).card(members, paper);
  }

  private Card card(List<WorkedPart> members, Paper paper) {
    List<Card.Section> sections = new ArrayList<>();
    List<String> how = new ArrayList<>(shared());
    how.addAll(JobFamilyWords.how(family));
    sections.add(Card.Section.of("One template for all", how));
    sections.add(
        Card.Section.of(
            "Laying the parts to it",
            family.members().stream().map(FamilyMember::sentence).toList()));
    sections.add(
        Card.Section.of("Bits", members.stream().map(one -> ShortCard.bit(one, units)).toList()));
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

  /** What is said of all before the parts one by one. */
  private List<String> shared() {
    String first = family.members().get(0).sentence();
    return family.sentences().stream().takeWhile(sentence -> !sentence.equals(first)).toList();
  }

  private String fromLeft() {
    return "From the left end of the plate, and for backs from its lowest edge, as drawn.";
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "at"));
    family.registration().stream()
        .sorted(
            Comparator.<Registration, Boolean>comparing(FamilyCard::isBack)
                .thenComparingDouble(this::at))
        .forEach(line -> rows.add(List.of(line.label(), Length.print(at(line), units))));
    return rows;
  }

  private double at(Registration line) {
    Bounds box = family.plate().bounds();
    return isBack(line) ? line.from().y() - box.minY() : line.from().x() - box.minX();
  }

  private static boolean isBack(Registration line) {
    return line.kind() == Registration.Kind.BACK;
  }
}
