package org.bearingline.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.yaml.YamlNode;

/** Puts derived values in an order in which each stands after those it needs. */
final class DerivedOrder {

  private final YamlNode block;
  private final Map<String, YamlNode> written;
  private final Map<String, Set<String>> needs = new TreeMap<>();
  private final Map<String, YamlNode> ordered = new LinkedHashMap<>();
  private final List<String> open = new ArrayList<>();

  private DerivedOrder(YamlNode block, Scope measures) {
    this.block = block;
    this.written = block.fields();
    for (String name : written.keySet()) {
      ShapeCheck.freeName(block, name, measures);
      needs.put(name, Formula.namesIn(written.get(name)));
    }
  }

  static Map<String, YamlNode> of(YamlNode block, Scope measures) {
    DerivedOrder order = new DerivedOrder(block, measures);
    order.written.keySet().forEach(order::place);
    return order.ordered;
  }

  private void place(String name) {
    if (ordered.containsKey(name) || !written.containsKey(name)) {
      return;
    }
    int at = open.indexOf(name);
    if (at >= 0) {
      List<String> ring = new ArrayList<>(open.subList(at, open.size()));
      ring.add(name);
      throw new Problem(
          block.placeOfName(ring.get(0)),
          ring.size() == 2
              ? "“" + name + "” is derived from itself; give it another expression"
              : "these values are derived from each other in a ring: "
                  + String.join(" needs ", ring)
                  + "; give one of them another expression");
    }
    open.add(name);
    needs.get(name).forEach(this::place);
    open.remove(open.size() - 1);
    ordered.put(name, written.get(name));
  }
}
