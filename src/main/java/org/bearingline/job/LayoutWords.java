package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Units;
import org.bearingline.routing.RoutingResult;

/** What a layout says on the terminal. */
final class LayoutWords {

  private LayoutWords() {}

  static List<String> lines(WorkedPart worked, List<String> files) {
    Units units = Settings.units(worked.order().wishes());
    RoutingResult result = worked.result();
    List<String> lines = new ArrayList<>();
    String name = worked.order().name();
    int quantity = worked.order().quantity();
    lines.add(
        (quantity == 1 ? name : name + " × " + quantity)
            + ": "
            + (worked.whole().filter(whole -> whole.operations().size() > 1).isPresent()
                ? ReachWords.largestForAll(result.largestCutter(), units)
                : ReachWords.largest(result.largestCutter(), units)));
    lines.addAll(
        worked
            .whole()
            .map(whole -> WholeWords.lines(whole, new FaceOrder(worked.grain()), units))
            .orElseGet(() -> ReachWords.lines(result.reach(), units)));
    if (worked.order().shape() instanceof DrawnDesign design) {
      lines.addAll(DrawnWords.lines(design, units));
    }
    if (worked.order().shape() instanceof PanelDesign design) {
      lines.addAll(PanelReports.lines(design.panel(), units));
    }
    result.proof().ifPresent(proof -> lines.add("  " + proof(proof.maxDeviation(), units)));
    result
        .roughLine()
        .filter(line -> !line.bridged().isEmpty())
        .ifPresent(
            line ->
                lines.add(
                    "  the saw passes over "
                        + line.bridged().size()
                        + (line.bridged().size() == 1 ? " hollow" : " hollows")
                        + " that its blade cannot follow."));
    lines.addAll(way(worked));
    lines.add("  " + String.join(", ", files));
    return lines;
  }

  private static List<String> way(WorkedPart worked) {
    if (worked.way() instanceof PlateWay.Half) {
      return List.of("  half a template, turned over on the centre line for the other half");
    }
    if (worked.way() instanceof PlateWay.Short way) {
      return List.of("  the curves of its edge come from " + Words.list(way.names()));
    }
    return worked.way() instanceof PlateWay.Shared shared
        ? List.of("  its edge comes from " + shared.name())
        : List.of();
  }

  /** The other piece of a pair, whose template has been told of. */
  static List<String> otherPiece(WorkedPart piece, List<String> files) {
    return List.of(
        PlateSections.title(piece) + ": from the same template with its side B up on face A",
        "  " + String.join(", ", files));
  }

  /** How true the template is, never better than what a millimetre's thousandth says. */
  static String proof(double deviation, Units units) {
    double mm = Math.max(0.001, Math.ceil(deviation * 1000) / 1000);
    String said =
        units == Units.MM
            ? String.format(Locale.ROOT, "%.3f mm", mm)
            : String.format(Locale.ROOT, "%.4f in", Math.ceil(mm / 25.4 * 10000) / 10000);
    return "true to the line within " + said;
  }
}
