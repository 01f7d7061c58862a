package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;

/**
 * The piece of a pair that is not drawn: the mirror image of the part, made from the same templates
 * turned over. Edges, marks and pins are mirrored; feed, passes and saw line are worked out anew,
 * for a router in the hands goes the same way round either piece.
 */
public final class OtherHand {

  private final OperationPlan drawn;
  private final FaceWishes.Pair pair;
  private final Similarity mirror;

  private OtherHand(OperationPlan drawn, FaceWishes.Pair pair) {
    this.drawn = drawn;
    this.pair = pair;
    this.mirror = drawn.faces().seenFromB();
  }

  /**
   * The plan of the other piece.
   *
   * @param drawn the plan of the piece that is drawn, not its own mirror image
   * @param name of the other piece
   * @param settings those of the drawn one
   */
  public static OperationPlan of(
      OperationPlan drawn, FaceWishes.Pair pair, String name, RoutingSettings settings, Kit kit) {
    return new OtherHand(drawn, pair).plan(name, settings, kit);
  }

  private OperationPlan plan(String name, RoutingSettings settings, Kit kit) {
    Part part = noted(drawn.part().transformed(mirror).named(name));
    List<Operation> operations =
        drawn.operations().stream().map(one -> one.operation().mirrored(mirror)).toList();
    OperationPlan anew = OperationPlan.of(part, operations, settings, kit);
    return new OperationPlan(
        part,
        anew.operations(),
        anew.templates().stream().map(this::turnedOver).toList(),
        faces(part, operations, settings.units()),
        anew.sentences());
  }

  /** The shape's own notes may speak of left and right. */
  private Part noted(Part part) {
    if (part.notes().isEmpty()) {
      return part;
    }
    List<String> notes = new ArrayList<>();
    notes.add("These notes speak of the " + pair.drawn() + " piece; this is its mirror image.");
    notes.addAll(part.notes());
    return new Part(
        part.name(), part.about(), part.contour(), part.cavities(), part.marks(), notes);
  }

  private PlannedTemplate turnedOver(PlannedTemplate template) {
    return new PlannedTemplate(
        template.template(),
        template.services(),
        template.guides(),
        template.eitherSideUp(),
        false,
        TemplateMaker.sides(template.services(), template.eitherSideUp(), false, true));
  }

  private FacePlan faces(Part part, List<Operation> operations, Units units) {
    FacePlan faces = drawn.faces();
    Registration registration = faces.registration().mirrored(mirror);
    if (registration instanceof Registration.Pins pins) {
      registration = new PinFinder(part, List.of(), Optional.empty(), units).retold(pins);
    }
    boolean worksB = operations.stream().anyMatch(one -> one.face() == Face.B);
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "This is the "
            + pair.mirrored()
            + " piece, the mirror image of the "
            + pair.drawn()
            + " one, from the same template: lay it on face A with its side B up.");
    if (worksB) {
      sentences.addAll(registration.sentences());
      sentences.add(
          "For face B turn the work over and lay the template on it with its own side A up.");
    }
    return new FacePlan(
        faces.axis().transformed(mirror),
        false,
        registration,
        faces.lies().stream().filter(lie -> lie.hand().equals(pair.mirrored())).toList(),
        sentences);
  }
}
