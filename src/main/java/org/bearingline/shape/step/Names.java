package org.bearingline.shape.step;

import java.util.regex.Pattern;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.yaml.YamlNode;

/** The rule for names of measures, derived values and counters. */
public final class Names {

  private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9_]{0,39}");

  private Names() {}

  /** The name written at a node, if it is well formed and free. */
  public static String checked(YamlNode node, Scope scope) {
    String name = node.text();
    if (!FORM.matcher(name).matches()) {
      throw node.problem(
          "“"
              + name
              + "” cannot be a name: names are small letters, digits and _ , and start with a"
              + " letter");
    }
    if (Formula.reserved(name)) {
      throw node.problem(
          "“" + name + "” has a meaning of its own in expressions; take another name");
    }
    if (scope.names().containsKey(name)) {
      throw node.problem("“" + name + "” is already a measure, a derived value or a counter");
    }
    return name;
  }
}
