package org.bearingline.job;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/**
 * Where a panel's block says what: a refusal of the geometry is told with the line of the field
 * that caused it.
 *
 * @param node the panel's block
 */
record PanelPlaces(YamlNode node) {

  /** Fields that a problem's field may be written in, the nearest first. */
  private static final Map<String, List<String>> WRITTEN =
      Map.ofEntries(
          Map.entry("width", List.of("opening")),
          Map.entry("height", List.of("opening")),
          Map.entry("panel", List.of("opening")),
          Map.entry("gap", List.of("gap-across", "gap-along", "start-gap", "groove")),
          Map.entry("gap across the fibres", List.of("gap-across")),
          Map.entry("gap along the fibres", List.of("gap-along")),
          Map.entry("start gap", List.of("start-gap")),
          Map.entry("least seat", List.of("least-seat")),
          Map.entry("fit in the slot", List.of("groove")),
          Map.entry("bearing", List.of("groove")),
          Map.entry("humidity", List.of("humidity", "moisture-range")),
          Map.entry("driest moisture", List.of("moisture-range", "humidity")),
          Map.entry("dampest moisture", List.of("moisture-range", "humidity")),
          Map.entry("moisture at assembly", List.of("moisture", "moisture-range", "humidity")),
          Map.entry("wood", List.of("species")));

  <T> T placed(Supplier<T> work) {
    try {
      return work.get();
    } catch (Problem found) {
      throw located(found);
    }
  }

  void placing(Runnable work) {
    placed(
        () -> {
          work.run();
          return node;
        });
  }

  private Problem located(Problem found) {
    if (!(found.place() instanceof Place.Field field)) {
      return found;
    }
    for (String rail : List.of("top-rail", "bottom-rail", "stiles", "left-stile", "right-stile")) {
      if (node.optional(rail).filter(name -> name.text().equals(field.name())).isPresent()) {
        return found.at(node.field(rail).place());
      }
    }
    if (field.name().equals("width") || field.name().equals("height")) {
      return found.at(node.field("opening").field(field.name()).place());
    }
    for (String written : WRITTEN.getOrDefault(field.name(), List.of(field.name()))) {
      if (node.optional(written).isPresent()) {
        return found.at(node.field(written).place());
      }
    }
    return found.at(node.place());
  }
}
