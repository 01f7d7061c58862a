package org.bearingline.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.bearingline.length.Units;
import org.bearingline.shape.figure.Cavities;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.step.Names;
import org.bearingline.shape.step.Outlines;
import org.bearingline.yaml.YamlNode;

/** Understands a written shape: names, kinds, dimensions, order of the derived values. */
final class ShapeCheck {

  private static final Pattern FILE_NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final int LONGEST_NAME = 60;

  private ShapeCheck() {}

  static CheckedShape check(WrittenShape written) {
    String name = name(written.name());
    Optional<Units> bare = written.units().map(ShapeCheck::units);
    List<Measure> measures = measures(written, bare);
    Scope scope = new Scope(dimensions(measures), words(measures), bare);
    Map<String, Formula> derived = new LinkedHashMap<>();
    if (written.derived().isPresent()) {
      for (Map.Entry<String, YamlNode> entry :
          DerivedOrder.of(written.derived().get(), scope).entrySet()) {
        Formula formula = Formula.read(entry.getValue(), scope);
        derived.put(entry.getKey(), formula);
        scope = scope.with(entry.getKey(), formula.dimension());
      }
    }
    CheckedShape shape =
        new CheckedShape(
            name,
            sentence(written.about()),
            measures,
            derived,
            conditions(written, scope),
            new Plan(
                Outlines.read(written.outline(), scope),
                written.outline().place(),
                Cavities.read(written.openings(), scope),
                MarkReader.read(written.marks(), scope),
                sentences(written.notes())));
    shape.measured(Map.of(), Optional.empty());
    return shape;
  }

  private static String name(YamlNode node) {
    String name = node.text();
    if (!FILE_NAME.matcher(name).matches() || name.length() > LONGEST_NAME) {
      throw node.problem(
          "“"
              + name
              + "” cannot name a shape: use small letters and digits joined by -, at most "
              + LONGEST_NAME);
    }
    return name;
  }

  private static Units units(YamlNode node) {
    return switch (node.text().toLowerCase(Locale.ROOT)) {
      case "in" -> Units.INCH;
      case "mm" -> Units.MM;
      default -> throw node.problem("the units of bare numbers are “in” or “mm”");
    };
  }

  private static List<Measure> measures(WrittenShape written, Optional<Units> bare) {
    List<Measure> measures = new ArrayList<>();
    if (written.measures().isEmpty()) {
      return measures;
    }
    YamlNode node = written.measures().get();
    Scope free = new Scope(Map.of(), List.of(), bare);
    node.fields()
        .forEach((name, field) -> measures.add(MeasureReader.read(node, name, field, free)));
    Set<String> names = new TreeSet<>(measures.stream().map(Measure::name).toList());
    for (Measure measure : measures) {
      for (String word : measure.choices()) {
        if (names.contains(word)) {
          throw node.field(measure.name())
              .problem("“" + word + "” is a choice and a measure too; rename one of them");
        }
      }
    }
    return measures;
  }

  private static Map<String, Dimension> dimensions(List<Measure> measures) {
    Map<String, Dimension> dimensions = new LinkedHashMap<>();
    measures.forEach(measure -> dimensions.put(measure.name(), measure.kind().dimension()));
    return dimensions;
  }

  private static List<String> words(List<Measure> measures) {
    return measures.stream().flatMap(measure -> measure.choices().stream()).distinct().toList();
  }

  private static List<Condition> conditions(WrittenShape written, Scope scope) {
    List<Condition> conditions = new ArrayList<>();
    if (written.conditions().isPresent()) {
      for (YamlNode item : written.conditions().get().items()) {
        item.allowOnly(Set.of("must", "else"));
        conditions.add(
            new Condition(
                Formula.read(item.field("must"), scope, Dimension.TRUTH),
                sentence(item.field("else"))));
      }
    }
    return conditions;
  }

  private static List<String> sentences(Optional<YamlNode> list) {
    return list.map(node -> node.items().stream().map(ShapeCheck::sentence).toList())
        .orElse(List.of());
  }

  /** Text for a person, its line breaks taken out. */
  static String sentence(YamlNode node) {
    return node.text().strip().replaceAll("\\s+", " ");
  }

  static String freeName(YamlNode block, String name, Scope scope) {
    return Names.checked(block.nameNode(name), scope);
  }
}
