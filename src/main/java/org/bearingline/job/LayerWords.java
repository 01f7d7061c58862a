package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.routing.RoutingResult;

/** Says in words what each layer of a plate's drawing shows. */
final class LayerWords {

  private final Plate plate;
  private final RoutingResult result;
  private final Units units;

  LayerWords(Plate plate, Units units) {
    this.plate = plate;
    this.result = plate.result();
    this.units = units;
  }

  /** Sentences for the layer of that id; none where its title says all. */
  List<String> of(String layer) {
    return switch (layer) {
      case "part" -> List.of(size());
      case "leftover" -> leftovers();
      case "recess" -> recesses();
      case "rough-line" ->
          result.roughLine().map(line -> Cards.saw(line, units).lines()).orElse(List.of());
      case "cutter-centre" ->
          List.of(
              "Here runs the centre of the "
                  + Length.print(result.settings().cutter().diameter(), units)
                  + " bit.");
      case "template" -> template();
      case "feed" ->
          List.of(
              FeedWords.of(result.part(), result.settings().station())
                  + " ("
                  + FeedWords.legend(plate.stations(), plate.facesFed())
                  + ")");
      case "marks" -> marks();
      default -> List.of();
    };
  }

  String size() {
    Bounds box = result.part().outline().bounds();
    String width = Length.print(box.width(), units);
    String height = Length.print(box.height(), units);
    // One sign of nearness holds for both.
    return width.startsWith("≈") || height.startsWith("≈")
        ? "about " + bare(width) + " × " + bare(height)
        : width + " × " + height;
  }

  private static String bare(String length) {
    return length.replaceFirst("^≈ ?", "");
  }

  private List<String> leftovers() {
    int count = result.reach().leftovers().size();
    return List.of(
        count == 1
            ? "1 place stays out of the bit's reach."
            : count + " places stay out of the bit's reach.");
  }

  private List<String> recesses() {
    List<String> lines = new ArrayList<>();
    for (Cavity cavity : result.part().cavities()) {
      if (cavity.depth().isPresent()) {
        lines.add(
            cavity.name()
                + ": "
                + cavity.kind().name().toLowerCase(Locale.ROOT)
                + ", "
                + Length.print(cavity.depth().getAsDouble(), units)
                + " deep");
      }
    }
    return lines;
  }

  private List<String> template() {
    List<String> lines = new ArrayList<>();
    plate
        .template()
        .ifPresent(
            template -> {
              lines.add(template.title() + ": " + Cards.offset(template, units));
              lines.addAll(template.notes());
            });
    return lines;
  }

  private List<String> marks() {
    return result.part().marks().stream()
        .map(Mark::label)
        .filter(label -> !label.isEmpty())
        .distinct()
        .toList();
  }
}
