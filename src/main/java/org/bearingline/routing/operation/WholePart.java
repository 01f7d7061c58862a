package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/** A part with the openings and holes that its operations bring. */
final class WholePart {

  private WholePart() {}

  static Part of(OperationPlan plan) {
    Part part = plan.part();
    List<Cavity> cavities = new ArrayList<>(part.cavities());
    List<Mark> marks = new ArrayList<>(part.marks());
    for (PlannedOperation planned : plan.operations()) {
      Operation operation = planned.operation();
      if (operation instanceof Hollow hollow
          && !(hollow instanceof InlayPlug)
          && cavities.stream().noneMatch(one -> one.name().equals(hollow.edge().of()))) {
        cavities.add(EdgeWork.cavity(hollow));
      }
      for (Hole hole : operation.holes()) {
        marks.add(new Mark.DrillCentre(hole.at(), hole.diameter(), hole.label()));
      }
    }
    return new Part(part.name(), part.about(), part.contour(), cavities, marks, part.notes());
  }
}
