package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;
import org.bearingline.routing.setup.PieceHold;

/** How a part and its templates are held, on the card. */
final class HoldingSection {

  private HoldingSection() {}

  static Card.Section of(WorkedPart worked, List<Plate> plates, Units units) {
    List<String> lines = new ArrayList<>();
    Bounds box = worked.result().part().contour().loop().bounds();
    PieceHold hold = PieceHold.of(box.width(), box.height(), units);
    if (!hold.safe() || isRoutedByHand(worked)) {
      lines.add(hold.sentence());
    }
    for (Plate plate : plates) {
      String which =
          plates.size() > 1
              ? "Template " + plate.template().map(Template::number).orElse(1) + ": "
              : "";
      plate
          .zones()
          .get()
          .ifPresent(zones -> zones.sentences().forEach(said -> lines.add(which + said)));
      if (plate.template().isPresent() && plate.stations().contains(Station.TABLE)) {
        lines.add(
            which
                + "At the table no clamp holds the work to the bench: fix it to the template so that"
                + " both are moved as one.");
      }
    }
    if (lines.isEmpty()) {
      lines.add("The piece is long enough to be moved past the cutter by hand.");
    }
    return Card.Section.of("Holding", lines);
  }

  /** Whether anything holds the work still while it is routed. */
  private static boolean isRoutedByHand(WorkedPart worked) {
    return worked
        .whole()
        .map(
            whole ->
                whole.operations().stream()
                    .filter(one -> one.operation().tooling().isPresent())
                    .anyMatch(one -> one.operation().station() == Station.HAND_HELD))
        .orElse(worked.result().settings().station() == Station.HAND_HELD);
  }
}
