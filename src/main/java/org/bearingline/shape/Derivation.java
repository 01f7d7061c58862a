package org.bearingline.shape;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * Works derived values out when they are wanted and not before: a condition that holds early keeps
 * a later expression from having no value.
 */
final class Derivation {

  private final Map<String, Formula> derived;
  private final Set<String> known = new TreeSet<>();
  private Values values;

  Derivation(Map<String, Formula> derived, Values measures) {
    this.derived = derived;
    this.values = measures;
  }

  /** The measures and at least the named values. */
  Values knowing(Collection<String> names) {
    names.forEach(this::learn);
    return values;
  }

  private void learn(String name) {
    Formula formula = derived.get(name);
    if (formula != null && known.add(name)) {
      formula.names().forEach(this::learn);
      values = values.with(name, formula.value(values));
    }
  }
}
