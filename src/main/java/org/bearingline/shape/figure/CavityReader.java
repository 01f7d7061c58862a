package org.bearingline.shape.figure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.bearingline.part.Cavity;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.step.Fields;
import org.bearingline.yaml.YamlNode;

/** Reads one opening, recess or ledge. */
final class CavityReader {

  private static final List<String> KINDS = List.of("through", "recess", "ledge");
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private CavityReader() {}

  static CavityPlan read(YamlNode item, Scope scope) {
    List<String> found = KINDS.stream().filter(kind -> item.optional(kind).isPresent()).toList();
    if (found.size() != 1) {
      throw item.problem(
          "an opening starts with its kind and name, as “through: name”, “recess: name” or"
              + " “ledge: name”");
    }
    return switch (found.get(0)) {
      case "through" -> figure(item, scope, Cavity.Kind.THROUGH, Set.of("through"));
      case "recess" -> figure(item, scope, Cavity.Kind.RECESS, Set.of("recess", "depth"));
      default ->
          item.optional("around").isPresent()
              ? following(item, scope)
              : figure(item, scope, Cavity.Kind.LEDGE, Set.of("ledge", "depth"));
    };
  }

  private static CavityPlan figure(
      YamlNode item, Scope scope, Cavity.Kind kind, Set<String> others) {
    Fields f = new Fields(item, scope);
    return new CavityPlan(
        name(item, kind),
        kind,
        Optional.of(Figures.read(item, scope, others)),
        Optional.empty(),
        Optional.empty(),
        kind == Cavity.Kind.THROUGH ? Optional.empty() : Optional.of(f.length("depth")),
        item.place());
  }

  private static CavityPlan following(YamlNode item, Scope scope) {
    Fields f = new Fields(item, scope).allowOnly("ledge", "around", "width", "depth");
    return new CavityPlan(
        name(item, Cavity.Kind.LEDGE),
        Cavity.Kind.LEDGE,
        Optional.empty(),
        Optional.of(item.field("around").text()),
        Optional.of(f.length("width")),
        Optional.of(f.length("depth")),
        item.place());
  }

  private static String name(YamlNode item, Cavity.Kind kind) {
    YamlNode node = item.field(kind.name().toLowerCase(java.util.Locale.ROOT));
    if (!NAME.matcher(node.text()).matches()) {
      throw node.problem(
          "“" + node.text() + "” cannot name an opening: use small letters and digits joined by -");
    }
    return node.text();
  }
}
