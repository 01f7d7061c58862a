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
    lines.add(PieceHold.of(box.width(), box.height(), units).sentence());
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
    return Card.Section.of("Holding", lines);
  }
}
