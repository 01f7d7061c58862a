package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/** Works out how templates lie on the faces and hands of a part. */
final class FaceMaker {

  private final Part part;
  private final List<Operation> operations;
  private final FaceWishes wishes;
  private final Optional<Mark.CentreLine> symmetryAxis;

  FaceMaker(Part part, List<Operation> operations, FaceWishes wishes) {
    this.part = part;
    this.operations = operations;
    this.wishes = wishes;
    this.symmetryAxis = Symmetry.axisOf(part, operations);
  }

  Mark.CentreLine axis() {
    return symmetryAxis.orElseGet(() -> Symmetry.axes(part).get(0));
  }

  FacePlan plan(List<Outline> plates, Units units) {
    boolean symmetrical = symmetryAxis.isPresent();
    Registration registration =
        new Registering(part, plates, axis(), symmetrical, units).chosen(wishes.register());
    List<String> sentences = new ArrayList<>();
    if (worksB() || wishes.register().isPresent()) {
      sentences.addAll(registration.sentences());
    }
    if (worksB()) {
      sentences.add(
          "For face B turn the work over and lay the template on it with its own side B up; it"
              + " covers the same places, whether the part is symmetrical or not.");
    }
    if (!plates.isEmpty()) {
      sentences.addAll(hands(symmetrical));
    }
    return new FacePlan(axis(), symmetrical, registration, lies(symmetrical), sentences);
  }

  private boolean worksB() {
    return operations.stream().anyMatch(operation -> operation.face() == Face.B);
  }

  private List<String> hands(boolean symmetrical) {
    if (wishes.pair().isEmpty()) {
      return symmetrical
          ? List.of()
          : List.of(
              "The part is not its own mirror image: laid on face A with the wrong side up, a"
                  + " template makes it left-handed. Write on every template which side is A.");
    }
    FaceWishes.Pair pair = wishes.pair().get();
    if (symmetrical) {
      return List.of(
          "The part is symmetrical about its centre line: the left and the right piece are the"
              + " same, made with either side of the template up.");
    }
    return List.of(
        "With side A of the template up on face A comes the "
            + pair.drawn()
            + " piece, as drawn; with side B up on face A comes the "
            + pair.mirrored()
            + " piece, its mirror image.");
  }

  private List<FacePlan.Lie> lies(boolean symmetrical) {
    boolean pair = wishes.pair().isPresent() && !symmetrical;
    List<FacePlan.Lie> lies = new ArrayList<>();
    TreeSet<Face> faces = new TreeSet<>();
    operations.forEach(operation -> faces.add(operation.face()));
    for (Face face : faces) {
      lies.add(new FacePlan.Lie(pair ? wishes.pair().get().drawn() : "", face, face));
    }
    if (pair) {
      for (Face face : faces) {
        lies.add(new FacePlan.Lie(wishes.pair().get().mirrored(), face, face.other()));
      }
    }
    return lies;
  }
}
