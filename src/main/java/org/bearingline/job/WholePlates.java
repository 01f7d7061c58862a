package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bearingline.length.Units;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;
import org.bearingline.routing.operation.Hole;
import org.bearingline.routing.operation.JoinedRouting;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedOperation;
import org.bearingline.routing.operation.PlannedTemplate;
import org.bearingline.routing.operation.Target;

/** The plates of a part with operations, each with only what it makes. */
final class WholePlates {

  private final WorkedPart worked;
  private final WholeWork whole;
  private final OperationPlan plan;

  private WholePlates(WorkedPart worked, WholeWork whole) {
    this.worked = worked;
    this.whole = whole;
    this.plan = whole.plan();
  }

  static List<Plate> of(WorkedPart worked, WholeWork whole) {
    WholePlates plates = new WholePlates(worked, whole);
    List<Plate> made = new ArrayList<>();
    for (PlannedTemplate template : plates.plan.templates()) {
      made.add(plates.plate(Optional.of(template)));
    }
    if (made.isEmpty()) {
      made.add(plates.plate(Optional.empty()));
    }
    return made;
  }

  private Plate plate(Optional<PlannedTemplate> planned) {
    int number = planned.map(PlannedTemplate::number).orElse(1);
    List<WorkedOperation> here =
        new ArrayList<>(planned.isPresent() ? whole.from(number) : List.of());
    List<Hole> holes = new ArrayList<>(planned.map(PlannedTemplate::guides).orElse(List.of()));
    if (number == 1) {
      // What needs no template has its place on the first drawing.
      here.addAll(whole.withoutTemplate());
      holes.addAll(unguided());
    }
    Units units = Settings.units(worked.order().wishes());
    List<Template> templates = planned.map(PlannedTemplate::template).stream().toList();
    List<PlannedOperation> operations = here.stream().map(WorkedOperation::planned).toList();
    List<Operation> done = here.stream().map(WorkedOperation::operation).toList();
    Part part = FinishedPart.of(done, plan.part());
    RoutingResult result =
        JoinedRouting.of(part, operations, templates, worked.result().settings(), worked.kit());
    Optional<Similarity> mirror =
        planned.filter(PlannedTemplate::mirroredPrint).map(template -> plan.faces().seenFromB());
    return new Plate(
            worked,
            planned.map(PlannedTemplate::template),
            result,
            PlateMarks.of(whole, here, holes, new FaceOrder(worked.grain()), units),
            mirror,
            new HoldingZones(
                planned.map(PlannedTemplate::template),
                result,
                atTable(here),
                worked.order().wishes()))
        .registered();
  }

  /** Names of the edges that are worked at a table. */
  private static Set<String> atTable(List<WorkedOperation> operations) {
    return operations.stream()
        .map(WorkedOperation::operation)
        .filter(operation -> operation.station() == Station.TABLE)
        .flatMap(operation -> operation.target().stream())
        .map(Target::of)
        .collect(Collectors.toSet());
  }

  /** Holes that no plate covers. */
  private List<Hole> unguided() {
    return plan.operations().stream()
        .flatMap(planned -> planned.operation().holes().stream())
        .filter(
            hole ->
                plan.templates().stream().noneMatch(template -> template.guides().contains(hole)))
        .toList();
  }

  /** Which bit makes what from a plate, in one sentence. */
  static List<String> notes(Plate plate, Units units) {
    WholeWork whole = plate.worked().whole().orElseThrow();
    List<String> said = new ArrayList<>();
    for (WorkedOperation one : whole.from(plate.template().map(Template::number).orElse(0))) {
      said.add(one.operation().name() + ": " + OperationTable.tool(one.operation(), units));
    }
    return said.isEmpty() ? List.of() : List.of("For " + String.join("; ", said) + ".");
  }
}
