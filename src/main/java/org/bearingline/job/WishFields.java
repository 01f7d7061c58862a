package org.bearingline.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/** The fields of tools, saw, router and paper, as the job, a part and a panel write them. */
final class WishFields {

  private WishFields() {}

  /**
   * The wishes of a block.
   *
   * @param measures of a part; those of the whole job have none
   * @param units of a bare length; empty to refuse one
   */
  static Wishes of(
      YamlNode node,
      Map<String, String> measures,
      Optional<WrittenFile> kit,
      OptionalDouble thickness,
      Optional<Units> units,
      DrawnWishes drawn) {
    if (node.optional("bearing").isPresent() && node.optional("collar").isPresent()) {
      throw node.field("collar")
          .problem("a bit follows a bearing or a collar; give one of the two");
    }
    OptionalDouble bit = length(node, "bit", units);
    return new Wishes(
        measures,
        bit.isPresent() ? List.of(bit.getAsDouble()) : List.of(),
        length(node, "bearing", units),
        length(node, "collar", units),
        kit,
        thickness,
        length(node, "allowance", units),
        length(node, "saw-blade", units),
        length(node, "run-out", units),
        length(node, "deepest-pass", units),
        node.optional("router").map(YamlNode::text),
        length(node, "router-base", units),
        length(node, "kerf", units),
        node.optional("paper").map(YamlNode::text),
        length(node, "margin", units),
        node.optional("printed").map(YamlNode::text),
        units,
        drawn);
  }

  /** A length in mm; empty where it is not written. */
  static OptionalDouble length(YamlNode node, String field, Optional<Units> units) {
    Optional<YamlNode> written = node.optional(field);
    if (written.isEmpty()) {
      return OptionalDouble.empty();
    }
    String text = written.get().text();
    try {
      return OptionalDouble.of(
          units.isPresent() ? Length.parse(text, units.get()) : Length.parse(text));
    } catch (Problem problem) {
      throw new Problem(written.get().place(), problem.getMessage(), problem);
    }
  }
}
