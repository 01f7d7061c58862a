package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bearingline.export.report.PanelReport;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.routing.Fibres;
import org.bearingline.routing.Panel;
import org.bearingline.routing.PanelSeat;
import org.bearingline.routing.PanelSettings;

/** How a panel sits in its frame, for the report and the terminal. */
final class PanelReports {

  private PanelReports() {}

  static PanelReport of(Panel panel) {
    PanelSettings settings = panel.settings();
    double across = across(panel);
    return new PanelReport(
        new Bounds(0, 0, panel.opening().width(), panel.opening().height()),
        panel.outline().bounds(),
        settings.slot().depth(),
        settings.species().name(),
        settings.species().solid(),
        settings.moisture(),
        settings.range().driest(),
        settings.range().dampest(),
        across * panel.movement().shrink(),
        across * panel.movement().growth(),
        settings.leastSeat(),
        panel.seats().stream()
            .map(
                seat ->
                    new PanelReport.Seat(
                        seat.side().word(),
                        fit(seat.driest()),
                        fit(seat.assembled()),
                        fit(seat.dampest())))
            .toList());
  }

  private static PanelReport.Fit fit(PanelSeat.Fit fit) {
    return new PanelReport.Fit(fit.seat(), fit.gap());
  }

  /** mm of the panel across its fibres. */
  private static double across(Panel panel) {
    return panel.settings().fibres() == Fibres.UPRIGHT ? panel.width() : panel.height();
  }

  static List<String> lines(Panel panel, Units units) {
    PanelSettings settings = panel.settings();
    List<String> lines = new ArrayList<>();
    lines.add("  " + moisture(panel, units));
    lines.add(
        "  in the groove of "
            + Length.print(settings.slot().depth(), units)
            + (settings.species().solid() ? ", driest to dampest: " : ": ")
            + panel.seats().stream()
                .map(s -> seat(s, panel, units))
                .collect(Collectors.joining("; "))
            + ".");
    panel.cautions().forEach(caution -> lines.add("  " + caution));
    return lines;
  }

  /** What the air does to it. */
  static String moisture(Panel panel, Units units) {
    PanelSettings settings = panel.settings();
    String species = settings.species().name();
    String name = species.substring(0, 1).toUpperCase(Locale.ROOT) + species.substring(1);
    if (!settings.species().solid()) {
      return name + " does not move with the seasons.";
    }
    return String.format(
        Locale.ROOT,
        "%s, %s, put in at %.1f %% moisture; later from %.1f to %.1f %%: across its fibres it"
            + " shrinks %s and swells %s at most.",
        name,
        settings.cut().words(),
        settings.moisture(),
        settings.range().driest(),
        settings.range().dampest(),
        Words.small(across(panel) * panel.movement().shrink(), units),
        Words.small(across(panel) * panel.movement().growth(), units));
  }

  private static String seat(PanelSeat seat, Panel panel, Units units) {
    String driest = Words.small(seat.driest().seat(), units);
    String dampest = Words.small(seat.dampest().seat(), units);
    String held = driest.equals(dampest) ? driest : driest + " to " + dampest;
    return seat.side().word()
        + " "
        + held
        + " held, "
        + Words.small(seat.dampest().gap(), units)
        + " free"
        + (panel.settings().species().solid() ? " when dampest" : "");
  }
}
