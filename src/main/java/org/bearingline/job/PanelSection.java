package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Panel;
import org.bearingline.routing.PanelSeat;
import org.bearingline.routing.PanelSettings;

/** What a panel's card says of how it sits in its frame. */
final class PanelSection {

  private PanelSection() {}

  static Card.Section words(PanelDesign design, Units units) {
    return Card.Section.of("Panel and groove", lines(design.panel(), units));
  }

  /** How much of each side is held, and what room is left to the groove's floor. */
  static Card.Section seats(PanelDesign design, Units units) {
    return Card.Section.table("In the groove", rows(design.panel(), units));
  }

  private static List<String> lines(Panel panel, Units units) {
    PanelSettings settings = panel.settings();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Made "
            + Length.print(panel.width(), units)
            + " wide and "
            + Length.print(panel.height(), units)
            + " high for an opening of "
            + Length.print(panel.opening().width(), units)
            + " between the stiles and "
            + Length.print(panel.opening().height(), units)
            + " at the stiles. The groove is "
            + Length.print(settings.slot().depth(), units)
            + " deep: a "
            + Length.print(settings.slot().cutter().diameter(), units)
            + " slot cutter on a "
            + Length.print(settings.slot().bearing().diameter(), units)
            + " bearing.");
    lines.add(PanelReports.moisture(panel, units));
    panel
        .tongue()
        .ifPresent(
            tongue ->
                lines.add(
                    "Tongue "
                        + Length.print(tongue.thickness(), units)
                        + " thick and "
                        + Length.print(tongue.width(), units)
                        + " wide all round; its shoulder stays "
                        + Words.small(tongue.shoulderDampest(), units)
                        + " to "
                        + Words.small(tongue.shoulderDriest(), units)
                        + " off the frame's edge."));
    lines.addAll(panel.cautions());
    return lines;
  }

  private static List<List<String>> rows(Panel panel, Units units) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("side", "held when driest", "held when dampest", "gap put in", "gap when dampest"));
    for (PanelSeat seat : panel.seats()) {
      rows.add(
          List.of(
              seat.side().word(),
              Words.small(seat.driest().seat(), units),
              Words.small(seat.dampest().seat(), units),
              Words.small(seat.assembled().gap(), units),
              Words.small(seat.dampest().gap(), units)));
    }
    return rows;
  }
}
