package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Mark;
import org.bearingline.routing.Template;

/** Finishes the plates: numbers, titles, working edges, guides for drilling, which side lies up. */
final class TemplateMaker {

  /** A pricked centre nearer to an edge of the plate than this, in mm, breaks out. */
  private static final double PRICK = 3;

  private final List<PlateDraft> plates;
  private final Similarity mirror;
  private final FaceWishes wishes;
  private final List<Hole> holes = new ArrayList<>();
  private final List<List<Hole>> guides = new ArrayList<>();

  TemplateMaker(
      List<Operation> operations,
      List<PlateDraft> plates,
      Mark.CentreLine axis,
      FaceWishes wishes) {
    this.plates = plates;
    this.mirror = Symmetry.mirror(axis);
    this.wishes = wishes;
    operations.forEach(operation -> holes.addAll(operation.holes()));
    for (PlateDraft plate : plates) {
      List<Hole> here = new ArrayList<>();
      for (Hole hole : List.copyOf(holes)) {
        Outline outline = outline(plate);
        if (outline.contains(hole.at()) && outline.distanceTo(hole.at()) >= PRICK) {
          here.add(hole);
          holes.remove(hole);
        }
      }
      guides.add(here);
    }
  }

  /** What is to be drilled but lies under no plate. */
  List<String> unmarked() {
    if (holes.isEmpty()) {
      return List.of();
    }
    List<String> labels = holes.stream().map(Hole::label).distinct().toList();
    return List.of(
        "Mark the centres of "
            + Sentences.list(labels)
            + " on the work itself: no template covers "
            + (holes.size() == 1 ? "it." : "them."));
  }

  List<PlannedTemplate> made() {
    List<PlannedTemplate> made = new ArrayList<>();
    for (int i = 0; i < plates.size(); i++) {
      made.add(made(i));
    }
    return made;
  }

  private PlannedTemplate made(int index) {
    PlateDraft plate = plates.get(index);
    List<Path> working = new ArrayList<>();
    Set<String> serves = new LinkedHashSet<>();
    Set<String> notes = new LinkedHashSet<>();
    List<PlannedTemplate.Service> services = new ArrayList<>();
    for (PlateEdge edge : plate.edges()) {
      Template alone = edge.first().result().templates().get(0);
      working.addAll(alone.workingEdges());
      notes.addAll(alone.notes());
      for (Routed operation : edge.served()) {
        serves.add(operation.edge().of());
        services.add(new PlannedTemplate.Service(operation, edge.loop(), offset(edge, operation)));
      }
    }
    String title =
        plates.size() == 1
            ? "template"
            : "template " + (index + 1) + ": " + Sentences.list(List.copyOf(serves));
    Template template =
        new Template(
            index + 1,
            title,
            outline(plate),
            working,
            List.copyOf(serves),
            services.get(0).offset(),
            List.copyOf(notes));
    boolean either =
        Symmetry.isSymmetrical(template.plate(), mirror)
            && Symmetry.areSymmetrical(guides.get(index), mirror);
    boolean onlyB =
        services.stream().allMatch(service -> service.operation().face() == Face.B)
            && wishes.pair().isEmpty();
    return new PlannedTemplate(
        template,
        services,
        guides.get(index),
        either,
        onlyB,
        sides(services, either, onlyB, false));
  }

  private static double offset(PlateEdge edge, Routed operation) {
    if (operation instanceof InlayPlug plug) {
      return -(plug.tool().follower().radius() + plug.tool().cutter().radius());
    }
    return operation instanceof EdgeGroove
        ? -edge.first().tool().wider()
        : -operation.tool().wider();
  }

  private static Outline outline(PlateDraft plate) {
    List<Loop> openings = new ArrayList<>();
    for (PlateEdge edge : plate.edges()) {
      if (!edge.isOutside()) {
        openings.add(edge.loop());
      }
    }
    return new Outline(plate.outer(), openings);
  }

  /**
   * Which side lies up on which face.
   *
   * @param otherHand whether for the mirror image of the part as drawn
   */
  static List<String> sides(
      List<PlannedTemplate.Service> services, boolean either, boolean onlyB, boolean otherHand) {
    List<String> sentences = new ArrayList<>();
    List<String> onA = names(services, Face.A);
    List<String> onB = names(services, Face.B);
    if (!onA.isEmpty()) {
      String up = otherHand ? "B" : "A";
      sentences.add("On face A, with side " + up + " up, it makes " + Sentences.list(onA) + ".");
    }
    if (!onB.isEmpty()) {
      String up = otherHand ? "A" : "B";
      sentences.add("On face B, with side " + up + " up, it makes " + Sentences.list(onB) + ".");
    }
    if (!onA.isEmpty() && !onB.isEmpty()) {
      sentences.add("On each face rout only what is named for it.");
    }
    if (either) {
      sentences.add("It is its own mirror image, so either side may lie up.");
    }
    if (onlyB) {
      sentences.add("It only ever lies on face B: its paper is printed mirrored.");
    }
    return sentences;
  }

  private static List<String> names(List<PlannedTemplate.Service> services, Face face) {
    return services.stream()
        .map(PlannedTemplate.Service::operation)
        .filter(operation -> operation.face() == face)
        .map(Operation::name)
        .toList();
  }
}
