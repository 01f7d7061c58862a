package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/** Reads what a part of a job file says of a drawn outline. */
final class DrawnFields {

  static final List<String> OF_A_DRAWING =
      List.of(
          "width",
          "height",
          "drawn-in",
          "tolerance",
          "gap",
          "drill-up-to",
          "layer",
          "outline",
          "symmetric",
          "unite",
          "sawn-edges");

  private DrawnFields() {}

  /** The shape's name or file, or the drawing: a part has one of the two. */
  static String source(YamlNode part) {
    Optional<YamlNode> drawing = part.optional("drawing");
    if (drawing.isEmpty()) {
      for (String field : OF_A_DRAWING) {
        Optional<YamlNode> said = part.optional(field);
        if (said.isPresent()) {
          throw said.get()
              .problem(
                  field + " belongs to a drawing; name its file with drawing, or leave it out");
        }
      }
      return part.optional("shape")
          .orElseThrow(
              () ->
                  part.problem(
                      "this part has neither shape nor drawing; write shape: with a shape's name or"
                          + " file, or drawing: with an .svg or .dxf file"))
          .text();
    }
    for (String field : List.of("shape", "measures")) {
      Optional<YamlNode> said = part.optional(field);
      if (said.isPresent()) {
        throw said.get().problem("a part with a drawing has no " + field + "; leave one out");
      }
    }
    return drawing.get().text();
  }

  static DrawnWishes of(YamlNode part, Optional<Units> units) {
    return new DrawnWishes(
        WishFields.length(part, "width", units),
        WishFields.length(part, "height", units),
        unit(part.optional("drawn-in")),
        WishFields.length(part, "tolerance", units),
        WishFields.length(part, "gap", units),
        WishFields.length(part, "drill-up-to", units),
        part.optional("layer").map(YamlNode::text),
        outline(part.optional("outline")),
        part.optional("symmetric").map(YamlNode::text),
        part.optional("unite").filter(DrawnFields::isYes).isPresent(),
        sides(part.optional("sawn-edges")));
  }

  private static OptionalDouble unit(Optional<YamlNode> written) {
    if (written.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(DrawnWishes.unitOf(written.get().text()));
    } catch (Problem problem) {
      throw written.get().problem(problem.getMessage());
    }
  }

  private static OptionalInt outline(Optional<YamlNode> written) {
    if (written.isEmpty()) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(DrawnWishes.outlineOf(written.get().text()));
    } catch (Problem problem) {
      throw written.get().problem(problem.getMessage());
    }
  }

  private static boolean isYes(YamlNode written) {
    return switch (written.text()) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default ->
          throw written.problem(
              "“"
                  + written.text()
                  + "” is no answer here; write yes to make one of filled shapes that lie over each"
                  + " other, or no");
    };
  }

  private static List<String> sides(Optional<YamlNode> written) {
    return written
        .map(
            node ->
                node.isList()
                    ? node.items().stream().map(YamlNode::text).toList()
                    : DrawnWishes.sidesOf(node.text()))
        .orElse(List.of());
  }
}
