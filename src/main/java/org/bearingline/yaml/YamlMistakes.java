package org.bearingline.yaml;

import java.util.List;

/** Says in a maker's words what the YAML parser stumbled over. */
final class YamlMistakes {

  /** What the parser's sentence holds, and what is meant by it; the first that fits counts. */
  private static final List<Meant> ALL =
      List.of(
          new Meant("\\t(TAB)", "a tab stands here; indent with spaces"),
          new Meant(
              "expected ',' or '}'",
              "a { opened before here is not closed; write } or the missing comma"),
          new Meant(
              "expected ',' or ']'",
              "a [ opened before here is not closed; write ] or the missing comma"),
          new Meant(
              "mapping values are not allowed here",
              "a colon is not expected here; put a text that holds “: ” in quotes, and see that"
                  + " the line is indented like its neighbours"),
          new Meant(
              "expected <block end>",
              "this line is not indented like those it belongs to; set it under them"),
          new Meant(
              "could not find expected ':'", "a field needs a colon and a space after its name"),
          new Meant(
              "found unexpected end of stream", "a quoted text is not closed; write the quote"));

  private record Meant(String said, String sentence) {}

  private YamlMistakes() {}

  static String sentence(String problem) {
    for (Meant meant : ALL) {
      if (problem.contains(meant.said())) {
        return meant.sentence();
      }
    }
    return "this is not readable as YAML: " + problem;
  }
}
