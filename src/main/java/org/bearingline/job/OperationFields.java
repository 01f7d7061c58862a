package org.bearingline.job;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.bearingline.kit.ToolSizes;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.Template;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Routed;
import org.bearingline.routing.operation.Target;
import org.bearingline.shape.figure.Figures;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Fields;
import org.bearingline.yaml.YamlNode;

/**
 * The fields of one operation, read as expressions over the measures of the part's shape.
 *
 * @param before the operations that stand above it
 */
record OperationFields(
    YamlNode node,
    Scope scope,
    Values values,
    Part part,
    List<Operation> before,
    OperationTools tools) {

  boolean has(String name) {
    return node.optional(name).isPresent();
  }

  /** Refuses fields that are neither common to all operations nor given here. */
  void allowOnly(Set<String> tools, String... own) {
    Set<String> known = new TreeSet<>(Set.of(own));
    known.addAll(tools);
    known.addAll(Set.of("face", "origin"));
    if (!tools.isEmpty()) {
      known.addAll(Set.of("router", "deepest-pass"));
    }
    node.allowOnly(known);
  }

  /** As above, with a figure among the fields. */
  void allowFigureAnd(Set<String> tools, String... own) {
    Set<String> all = new TreeSet<>(Figures.names());
    all.addAll(Set.of(own));
    allowOnly(tools, all.toArray(String[]::new));
  }

  Head head(String name, Face usual) {
    return new Head(name, face(usual), node.place(), tools.handling(this));
  }

  private Face face(Face usual) {
    Optional<YamlNode> written = node.optional("face");
    if (written.isEmpty()) {
      return usual;
    }
    return switch (written.get().text().toUpperCase(Locale.ROOT)) {
      case "A" -> Face.A;
      case "B" -> Face.B;
      default ->
          throw written
              .get()
              .problem("“" + written.get().text() + "” is no face; write A for the show face or B");
    };
  }

  /** A length above 0. */
  double length(String name) {
    return Formula.read(node.field(name), scope, Dimension.LENGTH)
        .positive(values, "“" + name + "”");
  }

  /** The cutting diameter of a bit. */
  double bit(String name) {
    return ToolSizes.bit(length(name), node.field(name).place());
  }

  /** The diameter of a bearing. */
  double bearing(String name) {
    return ToolSizes.bearing(length(name), node.field(name).place());
  }

  /** The outside diameter of a collar. */
  double collar(String name) {
    return ToolSizes.collar(length(name), node.field(name).place());
  }

  OptionalDouble optionalLength(String name) {
    return has(name) ? OptionalDouble.of(length(name)) : OptionalDouble.empty();
  }

  /** A length of 0 or more. */
  OptionalDouble optionalFrom0(String name) {
    return has(name)
        ? OptionalDouble.of(
            Formula.read(node.field(name), scope, Dimension.LENGTH)
                .notNegative(values, "“" + name + "”"))
        : OptionalDouble.empty();
  }

  double angle(String name) {
    return has(name) ? Formula.read(node.field(name), scope, Dimension.ANGLE).value(values) : 0;
  }

  /** A coordinate along a side, or several. */
  List<Double> along(String name, BoardSide side) {
    Point from = origin();
    double zero = side.outward().x() == 0 ? from.x() : from.y();
    YamlNode field = node.field(name);
    List<YamlNode> items = field.isList() ? field.items() : List.of(field);
    return items.stream()
        .map(item -> zero + Formula.read(item, scope, Dimension.LENGTH).value(values))
        .toList();
  }

  Point point(String name) {
    return pointOf(node.field(name));
  }

  private Point pointOf(YamlNode pair) {
    return Fields.pointOf(pair, scope).at(values).plus(origin());
  }

  /** One point, or a list of points. */
  List<Point> points(String name) {
    YamlNode field = node.field(name);
    boolean many = field.isList() && !field.items().isEmpty() && field.items().get(0).isList();
    return many ? field.items().stream().map(this::pointOf).toList() : List.of(pointOf(field));
  }

  BoardSide side(String name) {
    YamlNode field = node.field(name);
    for (BoardSide side : BoardSide.values()) {
      if (side.word().equals(field.text())) {
        return side;
      }
    }
    throw field.problem("“" + field.text() + "” is no side; write left, right, top or bottom");
  }

  /** From where positions count: the corner of the shape's axes, or its centre lines. */
  private Point origin() {
    Optional<YamlNode> written = node.optional("origin");
    if (written.isEmpty() || written.get().text().equals("shape")) {
      return Point.ORIGIN;
    }
    if (!written.get().text().equals("centre")) {
      throw written
          .get()
          .problem(
              "“"
                  + written.get().text()
                  + "” is no origin; write centre to count from the part's centre lines, or leave"
                  + " it out");
    }
    return CentreLines.crossing(part);
  }

  /**
   * The edge an opening operation works: a figure, a cavity by name, or the one of its own name.
   */
  Target opening(String name) {
    Map<String, YamlNode> fields = node.fields();
    if (fields.keySet().stream().anyMatch(Figures.names()::contains)) {
      Set<String> others = new TreeSet<>(fields.keySet());
      others.removeAll(Figures.names());
      Point from = origin();
      Contour contour =
          Figures.read(node, scope, others)
              .drawn(values)
              .transformed(Similarity.translation(from.x(), from.y()));
      return Target.opening(name, contour);
    }
    return has("cavity")
        ? cavityTarget(node.field("cavity"), node.field("cavity").text())
        : cavityTarget(node, name);
  }

  private Target cavityTarget(YamlNode at, String name) {
    Cavity cavity = cavity(at, name);
    return Target.opening(cavity.name(), cavity.contour());
  }

  /** The part's cavity of a name; refused at a node with the nearest name. */
  Cavity cavity(YamlNode at, String name) {
    List<String> known = part.cavities().stream().map(Cavity::name).toList();
    return part.cavities().stream()
        .filter(cavity -> cavity.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                at.problem(
                    "the part has no opening “"
                        + name
                        + "”"
                        + NearestName.hint(known, name)
                        + (known.isEmpty()
                            ? "; give a figure, such as rectangle"
                            : "; it has "
                                + String.join(", ", known)
                                + ", or give a figure, such as rectangle")));
  }

  /** An edge named by an earlier operation, a cavity, or “outside edge”. */
  Target edge(String field) {
    YamlNode at = node.field(field);
    String name = at.text();
    if (name.equals("outside") || name.equals(Template.OUTSIDE_EDGE)) {
      return Target.outside(part.contour());
    }
    for (Operation operation : before) {
      if (operation.name().equals(name) && operation instanceof Routed routed) {
        return routed.edge();
      }
    }
    return cavityTarget(at, name);
  }

  /** An earlier routed operation. */
  Routed earlier(String field) {
    YamlNode at = node.field(field);
    List<String> known =
        before.stream().filter(Routed.class::isInstance).map(Operation::name).toList();
    return before.stream()
        .filter(Routed.class::isInstance)
        .map(Routed.class::cast)
        .filter(operation -> operation.name().equals(at.text()))
        .findFirst()
        .orElseThrow(
            () ->
                at.problem(
                    "no operation “"
                        + at.text()
                        + "” stands above"
                        + NearestName.hint(known, at.text())
                        + "; name one that is routed before"));
  }

  Problem problem(String sentence) {
    return node.problem(sentence);
  }
}
