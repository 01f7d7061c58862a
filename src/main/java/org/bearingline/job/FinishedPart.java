package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.routing.operation.Hollow;
import org.bearingline.routing.operation.InlayPlug;
import org.bearingline.routing.operation.Ledge;
import org.bearingline.routing.operation.Operation;

/** A part with what its operations take out of it. */
final class FinishedPart {

  private FinishedPart() {}

  /** The part's own cavities, and those of the operations that the shape does not draw. */
  static Part of(Part part, List<Operation> operations) {
    List<Cavity> cavities = new ArrayList<>(part.cavities());
    for (Cavity made : made(operations)) {
      if (cavities.stream().noneMatch(cavity -> cavity.name().equals(made.name()))) {
        cavities.add(made);
      }
    }
    return with(part, cavities);
  }

  /** The part's edge with only what the given operations take out. */
  static Part of(List<Operation> operations, Part part) {
    return with(part, made(operations));
  }

  /** Names of the shape's cavities that no operation makes. */
  static List<String> left(Part part, List<Operation> operations) {
    List<Cavity> made = made(operations);
    return part.cavities().stream()
        .map(Cavity::name)
        .filter(name -> made.stream().noneMatch(cavity -> cavity.name().equals(name)))
        .toList();
  }

  private static List<Cavity> made(List<Operation> operations) {
    List<Cavity> cavities = new ArrayList<>();
    for (Operation operation : operations) {
      if (operation instanceof Hollow hollow && !(hollow instanceof InlayPlug)) {
        cavities.add(cavity(hollow));
      }
    }
    return cavities;
  }

  private static Cavity cavity(Hollow hollow) {
    OptionalDouble depth = hollow.depth();
    Cavity.Kind kind =
        depth.isEmpty()
            ? Cavity.Kind.THROUGH
            : hollow instanceof Ledge ? Cavity.Kind.LEDGE : Cavity.Kind.RECESS;
    return new Cavity(hollow.edge().of(), kind, hollow.edge().contour(), depth);
  }

  private static Part with(Part part, List<Cavity> cavities) {
    return new Part(
        part.name(), part.about(), part.contour(), cavities, part.marks(), part.notes());
  }
}
