package org.bearingline.shape;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.problem.NearestName;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Names;
import org.bearingline.yaml.YamlNode;

/** Reads one measure of a shape file. */
final class MeasureReader {

  private static final Values NONE = Values.of(Map.of());
  private static final List<String> KINDS = List.of("length", "number", "count", "angle");

  private MeasureReader() {}

  static Measure read(YamlNode block, String name, YamlNode node, Scope scope) {
    ShapeCheck.freeName(block, name, scope);
    node.allowOnly(Set.of("default", "from", "to", "about", "kind", "choices"));
    String about = ShapeCheck.sentence(node.field("about"));
    return node.optional("choices").isPresent()
        ? choice(name, node, about)
        : quantity(name, node, about, scope);
  }

  private static Measure choice(String name, YamlNode node, String about) {
    node.allowOnly(Set.of("default", "choices", "about"));
    Scope free = new Scope(Map.of(), List.of(), Optional.empty());
    List<String> choices =
        node.field("choices").items().stream().map(item -> Names.checked(item, free)).toList();
    if (choices.size() < 2 || Set.copyOf(choices).size() < choices.size()) {
      throw node.field("choices").problem("a choice is between two or more different words");
    }
    YamlNode given = node.field("default");
    int index = choices.indexOf(given.text());
    if (index < 0) {
      throw given.problem(
          "“"
              + given.text()
              + "” is not one of "
              + String.join(", ", choices)
              + NearestName.hint(choices, given.text()));
    }
    return new Measure(
        name,
        MeasureKind.CHOICE,
        given.text(),
        "",
        "",
        choices,
        about,
        index,
        0,
        choices.size() - 1.0);
  }

  private static Measure quantity(String name, YamlNode node, String about, Scope scope) {
    YamlNode given = node.field("default");
    MeasureKind kind = kind(node, given, scope);
    double value = value(given, kind, scope);
    double from = value(node.field("from"), kind, scope);
    double to = value(node.field("to"), kind, scope);
    if (from > to) {
      throw node.field("from").problem("“from” is more than “to”; exchange them");
    }
    if (value < from || value > to) {
      throw given.problem("the default lies outside “from” and “to”; change one of them");
    }
    return new Measure(
        name,
        kind,
        given.text().strip(),
        node.field("from").text().strip(),
        node.field("to").text().strip(),
        List.of(),
        about,
        value,
        from,
        to);
  }

  private static MeasureKind kind(YamlNode node, YamlNode given, Scope scope) {
    Optional<YamlNode> written = node.optional("kind");
    if (written.isPresent()) {
      String word = written.get().text();
      if (!KINDS.contains(word)) {
        throw written
            .get()
            .problem(
                "“"
                    + word
                    + "” is no kind of measure; the kinds are "
                    + String.join(", ", KINDS)
                    + ", and a choice has “choices:”");
      }
      return MeasureKind.valueOf(word.toUpperCase(Locale.ROOT));
    }
    Dimension dimension = Formula.read(given, scope).dimension();
    if (dimension.equals(Dimension.LENGTH)) {
      return MeasureKind.LENGTH;
    }
    if (dimension.equals(Dimension.ANGLE)) {
      return MeasureKind.ANGLE;
    }
    if (dimension.equals(Dimension.NUMBER) && scope.bareUnits().isPresent()) {
      return MeasureKind.LENGTH;
    }
    throw given.problem(
        "“"
            + given.text()
            + "” has no unit: write one, such as 3/4in, 19mm or 30deg, or add “kind: count” or"
            + " “kind: number”");
  }

  private static double value(YamlNode node, MeasureKind kind, Scope scope) {
    double value = Formula.read(node, scope, kind.dimension()).value(NONE);
    if (kind == MeasureKind.COUNT && value != Math.rint(value)) {
      throw node.problem("a count is a whole number, and “" + node.text() + "” is none");
    }
    return value;
  }
}
