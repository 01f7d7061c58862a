package org.bearingline.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/**
 * Where a job file says what: a mistake found while a part is worked out is told with the line that
 * caused it, not with the option of the command that nobody gave.
 */
final class WrittenPlaces {

  /** For a part that no job file names: the options of the command are the places. */
  static final WrittenPlaces NONE = new WrittenPlaces(Map.of(), Map.of(), Optional.empty());

  private static final String OPTION = "--";

  private final Map<String, Place> fields;
  private final Map<String, Place> measures;
  private final Optional<Place> part;

  private WrittenPlaces(
      Map<String, Place> fields, Map<String, Place> measures, Optional<Place> part) {
    this.fields = fields;
    this.measures = measures;
    this.part = part;
  }

  /**
   * @param top of the file, with what holds for every part
   * @param part one part's block; it goes before the top
   */
  static WrittenPlaces of(YamlNode top, YamlNode part) {
    Map<String, Place> fields = new HashMap<>();
    top.optional("stock").ifPresent(stock -> collect(stock, fields));
    collect(top, fields);
    collect(part, fields);
    Map<String, Place> measures = new HashMap<>();
    part.optional("measures").ifPresent(block -> collect(block, measures));
    return new WrittenPlaces(
        fields, measures, Optional.of(part.optional("measures").orElse(part).place()));
  }

  private static void collect(YamlNode block, Map<String, Place> into) {
    block.fields().forEach((name, node) -> into.put(name, node.place()));
  }

  /** What the command itself says is no longer the file's word. */
  WrittenPlaces outdoneBy(Wishes command) {
    if (part.isEmpty()) {
      return this;
    }
    Map<String, Place> left = new HashMap<>(fields);
    if (!command.bits().isEmpty()) {
      left.remove("bit");
    }
    drop(left, "bearing", command.bearing().isPresent());
    drop(left, "collar", command.collar().isPresent());
    drop(left, "kit", command.kit().isPresent());
    drop(left, "thickness", command.thickness().isPresent());
    drop(left, "allowance", command.allowance().isPresent());
    drop(left, "saw-blade", command.sawBlade().isPresent());
    drop(left, "run-out", command.runOut().isPresent());
    drop(left, "deepest-pass", command.deepestPass().isPresent());
    drop(left, "router-base", command.routerBase().isPresent());
    drop(left, "router", command.router().isPresent());
    drop(left, "kerf", command.kerf().isPresent());
    drop(left, "paper", command.paper().isPresent());
    drop(left, "margin", command.margin().isPresent());
    drop(left, "printed", command.printed().isPresent());
    Map<String, Place> set = new HashMap<>(measures);
    set.keySet().removeAll(command.measures().keySet());
    return new WrittenPlaces(left, set, part);
  }

  private static void drop(Map<String, Place> left, String field, boolean given) {
    if (given) {
      left.remove(field);
    }
  }

  /** The problem where it was written; unchanged where the file has no word for it. */
  Problem at(Problem found) {
    if (found.place() instanceof Place.Option option) {
      Place written = fields.get(option.name().substring(OPTION.length()));
      return written == null ? found : found.at(written);
    }
    if (found.place() instanceof Place.Field field && part.isPresent()) {
      return new Problem(measures.getOrDefault(field.name(), part.get()), found.spoken(), found);
    }
    return found;
  }
}
