package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Template;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.PlannedTemplate;

/** What the card of a part with operations says beside what every card says. */
final class WholeCard {

  private final WorkedPart worked;
  private final WholeWork whole;
  private final FaceOrder faces;
  private final Units units;

  WholeCard(WorkedPart worked, WholeWork whole, Units units) {
    this.worked = worked;
    this.whole = whole;
    this.faces = new FaceOrder(worked.grain());
    this.units = units;
  }

  List<Card.Section> sections() {
    List<Card.Section> sections = new ArrayList<>();
    if (!whole.meetings().isEmpty()) {
      sections.add(Card.Section.of("Look again before you cut", whole.meetings()));
    }
    Card.Section templates = templates();
    if (!templates.lines().isEmpty()) {
      sections.add(templates);
    }
    if (!whole.plan().faces().sentences().isEmpty()) {
      sections.add(Card.Section.of("Faces", whole.plan().faces().sentences()));
    }
    sections.add(setups());
    return sections;
  }

  private Card.Section templates() {
    List<String> lines = new ArrayList<>();
    for (PlannedTemplate planned : whole.plan().templates()) {
      Template template = planned.template();
      List<String> makes = new ArrayList<>();
      for (PlannedTemplate.Service service : planned.services()) {
        makes.add(service.operation().name() + " " + edge(service));
      }
      lines.add("Template " + template.number() + ": " + String.join("; ", makes) + ".");
      lines.addAll(template.notes());
      lines.addAll(planned.sentences());
    }
    lines.addAll(turned());
    lines.addAll(whole.plan().sentences());
    worked
        .result()
        .proof()
        .ifPresent(
            proof ->
                lines.add(
                    "Played forward, "
                        + (whole.plan().templates().size() > 1 ? "they are " : "it is ")
                        + LayoutWords.proof(proof.maxDeviation(), units)
                        + "."));
    return Card.Section.of("Templates", lines);
  }

  /** Where the grain asks for another face than the one for which the templates are told. */
  private List<String> turned() {
    List<String> names =
        whole.operations().stream()
            .filter(one -> one.planned().template().isPresent())
            .map(WorkedOperation::operation)
            .filter(faces::beginsFromTheOther)
            .map(Operation::name)
            .toList();
    return names.isEmpty()
        ? List.of()
        : List.of(
            "Begin "
                + Words.list(names)
                + " on the other face, as told under “Feed and grain”: there the template lies with"
                + " its other side up, over the same places.");
  }

  private String edge(PlannedTemplate.Service service) {
    double offset = service.offset();
    if (Math.abs(offset) < 1e-9) {
      return "on the line";
    }
    String distance = Length.print(Math.abs(offset), units);
    boolean larger = offset < 0 != service.operation().edge().outside();
    return distance + (larger ? " outside the line" : " inside the line");
  }

  private Card.Section setups() {
    // What is set up alike, such as the two grooves of a muntin, is told once.
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (WorkedOperation one : whole.operations()) {
      List<String> said = new ArrayList<>(one.planned().sentences());
      said.addAll(one.sentences());
      if (!said.isEmpty()) {
        alike
            .computeIfAbsent(String.join(" ", said), unused -> new ArrayList<>())
            .add(one.number() + " " + one.operation().name());
      }
    }
    List<String> lines = new ArrayList<>();
    alike.forEach((said, names) -> lines.add(Words.list(names) + ": " + said));
    return Card.Section.of("Setting up", lines);
  }

  Optional<Card.Section> table() {
    return Optional.of(OperationTable.of(whole, faces, units));
  }
}
