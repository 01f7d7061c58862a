package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Operation;

/**
 * From which faces an operation is worked in the end. What goes right through may be finished after
 * turning the work over, or be begun from the other face, where the grain asks for it; picture,
 * table and plan tell the same.
 *
 * @param grain the plan of feed; empty for sheet stock
 */
record FaceOrder(Optional<GrainWork> grain) {

  /** In the order of work, one or two. */
  List<Face> of(Operation operation) {
    return grain
        .filter(plan -> operation.depth().isEmpty())
        .flatMap(plan -> operation.target().map(target -> plan.faces(target.of())))
        .filter(faces -> !faces.isEmpty())
        .orElse(List.of(operation.face()));
  }

  /** Whether it is begun from the face that the job does not name. */
  boolean beginsFromTheOther(Operation operation) {
    return of(operation).get(0) != operation.face();
  }

  /** For a narrow column; at the table how the work lies there. */
  String column(Operation operation) {
    String letters = of(operation).stream().map(Face::name).collect(Collectors.joining(", then "));
    return operation.station() == Station.HAND_HELD || operation.tooling().isEmpty()
        ? letters
        : letters + (operation.faceUp() == operation.face() ? " up, table" : " down, table");
  }

  /** "face A", or "face B, then face A". */
  String words(Operation operation) {
    return of(operation).stream().map(Face::words).collect(Collectors.joining(", then "));
  }

  /** What stands behind its name in a picture: nothing where face A comes first. */
  String label(Operation operation) {
    return of(operation).get(0) == Face.B ? ", face B" : "";
  }
}
