package org.bearingline.yaml;

import java.util.Optional;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** Reads the text of one YAML file. */
public final class YamlFile {

  /** Far above any file a maker writes by hand, far below what would fill memory. */
  private static final int LONGEST = 1_000_000;

  private static final int DEEPEST = 50;

  /** A repeated or self-containing list would make a small file endless. */
  private static final int MOST_ALIASES = 0;

  private YamlFile() {}

  /**
   * The top node of the file's one document.
   *
   * @param fileName as the user named it, for the place of a mistake
   * @throws Problem where the text is no YAML, holds more than one document, or is empty, too large
   *     or too deep
   */
  public static YamlNode read(String fileName, String text) {
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(fileName)
            .setAllowDuplicateKeys(true) // refused later, with the place of the second one
            .setMaxAliasesForCollections(MOST_ALIASES)
            .setCodePointLimit(LONGEST)
            // Scalars are handed on as written, so none is tried against the patterns of numbers.
            .setSchema(new FailsafeSchema())
            .build();
    try {
      Optional<Node> top = new Compose(settings).composeString(text);
      if (top.isEmpty()) {
        throw new Problem(
            Place.file(fileName), "the file is empty; write a name and what it needs");
      }
      YamlNode node = new YamlNode(fileName, top.get());
      node.checkDepth(DEEPEST);
      return node;
    } catch (MarkedYamlEngineException unreadable) {
      Place place =
          unreadable
              .getProblemMark()
              .map(mark -> spot(fileName, mark))
              .orElseGet(() -> Place.file(fileName));
      throw new Problem(place, YamlMistakes.sentence(words(unreadable.getProblem())), unreadable);
    } catch (YamlEngineException unreadable) {
      if (words(unreadable.getMessage()).startsWith("Number of aliases")) {
        throw new Problem(
            Place.file(fileName),
            "a list or block repeated by “*name” is not read; write it out again",
            unreadable);
      }
      throw new Problem(
          Place.file(fileName),
          "this is not readable as YAML: " + words(unreadable.getMessage()),
          unreadable);
    } catch (StackOverflowError tooDeep) {
      throw new Problem(
          Place.file(fileName), "the file nests deeper than " + DEEPEST + " levels; flatten it");
    }
  }

  static Place spot(String fileName, Mark mark) {
    return Place.spot(fileName, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static String words(String message) {
    return message == null ? "it breaks off" : message.strip().replaceAll("\\s+", " ");
  }
}
