package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.outline.construct.Side;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.yaml.YamlNode;

/** The fields of a step, an opening or a mark, read as formulas. */
public record Fields(YamlNode node, Scope scope) {

  public Place place() {
    return node.place();
  }

  public Fields allowOnly(String... names) {
    node.allowOnly(Set.of(names));
    return this;
  }

  public boolean has(String name) {
    return node.optional(name).isPresent();
  }

  /** How many of the named fields are written. */
  public int count(String... names) {
    int count = 0;
    for (String name : names) {
      count += has(name) ? 1 : 0;
    }
    return count;
  }

  public Formula formula(String name, Dimension dimension) {
    return Formula.read(node.field(name), scope, dimension);
  }

  public Formula length(String name) {
    return formula(name, Dimension.LENGTH);
  }

  public Formula angle(String name) {
    return formula(name, Dimension.ANGLE);
  }

  public Optional<Formula> optionalLength(String name) {
    return has(name) ? Optional.of(length(name)) : Optional.empty();
  }

  public Optional<Formula> optionalAngle(String name) {
    return has(name) ? Optional.of(angle(name)) : Optional.empty();
  }

  public PointFormula point(String name) {
    return pointOf(node.field(name), scope);
  }

  public List<PointFormula> points(String name) {
    List<PointFormula> points = new ArrayList<>();
    node.field(name).items().forEach(item -> points.add(pointOf(item, scope)));
    return points;
  }

  /** Two lengths written as {@code [x, y]}. */
  public static PointFormula pointOf(YamlNode node, Scope scope) {
    if (!node.isList() || node.items().size() != 2) {
      throw node.problem(
          "a pair is wanted here, as [x, y]; an expression that holds a comma goes in quotes");
    }
    List<YamlNode> pair = node.items();
    return new PointFormula(
        Formula.read(pair.get(0), scope, Dimension.LENGTH),
        Formula.read(pair.get(1), scope, Dimension.LENGTH));
  }

  /** One of a few words. */
  public String word(String name, List<String> words) {
    return wordOf(node.field(name), words);
  }

  private static String wordOf(YamlNode field, List<String> words) {
    String word = field.text();
    if (!words.contains(word)) {
      throw field.problem(
          "“"
              + word
              + "” is not one of "
              + String.join(", ", words)
              + NearestName.hint(words, word));
    }
    return word;
  }

  public Side side(String name) {
    return word(name, List.of("left", "right")).equals("left") ? Side.LEFT : Side.RIGHT;
  }

  /** The edge kind of a straight step: routed unless it says otherwise. */
  public EdgeKind edge() {
    return has("edge") ? edgeOf(node.field("edge")) : EdgeKind.ROUTED;
  }

  static EdgeKind edgeOf(YamlNode field) {
    return wordOf(field, List.of("routed", "sawn")).equals("sawn")
        ? EdgeKind.SAWN
        : EdgeKind.ROUTED;
  }

  /** A curved step may say that it is routed, and nothing else. */
  public void curvedEdge() {
    if (edge() == EdgeKind.SAWN) {
      throw node.field("edge")
          .problem("a sawn edge is straight; leave “edge: sawn” to lines, this curve is routed");
    }
  }

  public Problem problem(String sentence) {
    return node.problem(sentence);
  }
}
