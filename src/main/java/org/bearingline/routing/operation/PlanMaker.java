package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Region;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Groove;
import org.bearingline.routing.RoutingSettings;

/** Makes the plan: each operation alone, then its template, then its faces. */
final class PlanMaker {

  private final Part part;
  private final List<Operation> operations;
  private final RoutingSettings settings;
  private final Kit kit;
  private final FaceWishes wishes;
  private final List<EdgeWork> works = new ArrayList<>();

  PlanMaker(
      Part part, List<Operation> operations, RoutingSettings settings, Kit kit, FaceWishes wishes) {
    this.part = part;
    this.operations = List.copyOf(operations);
    this.settings = settings;
    this.kit = kit;
    this.wishes = wishes;
  }

  OperationPlan plan() {
    OperationCheck.check(part, operations, settings);
    for (Operation operation : operations) {
      if (operation instanceof EdgeOperation edge) {
        works.add(EdgeWork.of(part, edge, settings, kit));
      }
    }
    for (Operation operation : operations) {
      if (operation instanceof EdgeGroove groove && groove.rides() == EdgeGroove.Rides.TEMPLATE) {
        works.add(EdgeWork.of(part, groove, virtual(groove), settings, kit));
      } else if (operation instanceof Hollow hollow && !(hollow instanceof InlayPlug)) {
        works.add(EdgeWork.of(part, hollow, settings, kit));
      }
    }
    TemplateSharing.Shared shared = TemplateSharing.share(part, works, settings, kit);
    servePlugs(shared.plates());
    FaceMaker faces = new FaceMaker(part, operations, wishes);
    TemplateMaker templates = new TemplateMaker(operations, shared.plates(), faces.axis(), wishes);
    List<PlannedTemplate> made = templates.made();
    FacePlan facePlan =
        faces.plan(
            made.stream().map(planned -> planned.template().plate()).toList(), settings.units());
    List<String> sentences = new ArrayList<>(shared.sentences());
    sentences.addAll(templates.unmarked());
    return new OperationPlan(part, planned(shared.plates()), made, facePlan, sentences);
  }

  /**
   * The tool that would cut the part's edge from the template that the groove wants: the slot
   * cutter less the depth of the groove.
   */
  private Tooling virtual(EdgeGroove groove) {
    double r = groove.cutter().cutter().radius();
    double reduced = r - into(groove);
    return new Tooling(new Cutter(2 * reduced), OptionalDouble.empty(), groove.cutter().bearing());
  }

  /**
   * mm from the part's edge to the groove's floor: as asked, else what the edge's template gives.
   */
  private double into(EdgeGroove groove) {
    if (groove.into().isPresent()) {
      return groove.into().getAsDouble();
    }
    double back =
        works.stream()
            .filter(work -> work.operation().edge().equals(groove.edge()))
            .mapToDouble(work -> work.tool().wider())
            .findFirst()
            .orElse(0);
    double into = groove.cutter().depth() + back;
    if (!(into > 0)) {
      throw groove.problem(
          groove.name()
              + ": the template stands so far outside the edge that the slot cutter does not reach"
              + " it; choose a smaller bearing");
    }
    return into;
  }

  private void servePlugs(List<PlateDraft> plates) {
    for (Operation operation : operations) {
      if (operation instanceof InlayPlug plug) {
        PlateEdge edge = serving(plates, plug.pocket()).orElseThrow();
        edge.serve(plug);
      }
    }
  }

  private static Optional<PlateEdge> serving(List<PlateDraft> plates, String name) {
    return plates.stream()
        .flatMap(plate -> plate.edges().stream())
        .filter(edge -> edge.served().stream().anyMatch(one -> one.name().equals(name)))
        .findFirst();
  }

  private List<PlannedOperation> planned(List<PlateDraft> plates) {
    List<PlannedOperation> planned = new ArrayList<>();
    for (Operation operation : operations) {
      planned.add(planned(operation, plates));
    }
    return planned;
  }

  private PlannedOperation planned(Operation operation, List<PlateDraft> plates) {
    OptionalInt number = OptionalInt.empty();
    Region made = Region.EMPTY;
    for (int i = 0; i < plates.size(); i++) {
      for (PlateEdge edge : plates.get(i).edges()) {
        if (edge.served().contains(operation)) {
          number = OptionalInt.of(i + 1);
          made = made(operation, edge);
        }
      }
    }
    Optional<EdgeWork> work =
        works.stream().filter(one -> one.operation().equals(operation)).findFirst();
    return new PlannedOperation(
        operation,
        number,
        operation instanceof EdgeGroove ? Optional.empty() : work.map(EdgeWork::result),
        made,
        operation instanceof EdgeGroove groove ? Optional.of(groove(groove)) : Optional.empty(),
        OperationWords.of(operation, settings.units()));
  }

  private static Region made(Operation operation, PlateEdge edge) {
    if (operation instanceof InlayPlug plug) {
      return Play.plug(edge.loop(), plug.tool());
    }
    return operation instanceof Routed routed && !(operation instanceof EdgeGroove)
        ? Play.cut(edge.loop(), edge.isOutside(), routed.tool())
        : Region.EMPTY;
  }

  private Groove groove(EdgeGroove groove) {
    try {
      return groove.rides() == EdgeGroove.Rides.WORK
          ? Groove.along(part, groove.cutter(), groove.extent(), settings.units())
          : Groove.along(
              part,
              groove.cutter(),
              groove.extent(),
              groove.cutter().depth() - into(groove),
              settings.units());
    } catch (Problem refused) {
      throw EdgeWork.located(groove, refused);
    }
  }
}
