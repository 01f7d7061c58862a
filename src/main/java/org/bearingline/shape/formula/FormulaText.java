package org.bearingline.shape.formula;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/**
 * An expression with its written lengths and angles taken out: each is replaced by a name such as
 * {@code ℓ0}, because the expression library does not know {@code 1-1/2in}.
 */
final class FormulaText {

  private static final int LONGEST = 400;

  private final YamlNode node;
  private final String written;
  private final String replaced;
  private final List<Literal> literals;
  private final int[] origin;

  private FormulaText(
      YamlNode node, String written, String replaced, List<Literal> literals, int[] origin) {
    this.node = node;
    this.written = written;
    this.replaced = replaced;
    this.literals = literals;
    this.origin = origin;
  }

  static FormulaText of(YamlNode node) {
    if (node.isBlank() || !node.isScalar()) {
      throw node.problem("an expression is wanted here, such as “length / 2”");
    }
    String written = node.text();
    if (written.length() > LONGEST) {
      throw node.problem(
          "this expression is longer than "
              + LONGEST
              + " letters; give parts of it names under “derived:”");
    }
    if (written.contains(Literal.PREFIX)) {
      throw node.problem("“" + Literal.PREFIX + "” cannot be part of an expression");
    }
    StringBuilder out = new StringBuilder();
    List<Literal> literals = new ArrayList<>();
    List<Integer> origin = new ArrayList<>();
    int at = 0;
    while (at < written.length()) {
      Literal literal = Literal.at(written, at, node);
      if (literal != null) {
        String name = Literal.PREFIX + literals.size();
        literals.add(literal);
        for (int i = 0; i < name.length(); i++) {
          origin.add(at);
        }
        out.append(name);
        at = literal.end();
      } else {
        int end = Literal.endOfWord(written, at);
        for (int i = at; i < end; i++) {
          origin.add(i);
        }
        out.append(written, at, end);
        at = end;
      }
    }
    return new FormulaText(
        node,
        written,
        out.toString(),
        List.copyOf(literals),
        origin.stream().mapToInt(Integer::intValue).toArray());
  }

  String written() {
    return written;
  }

  String replaced() {
    return replaced;
  }

  /** The literal a placeholder stands for, or null. */
  Literal literal(String name) {
    if (!name.startsWith(Literal.PREFIX)) {
      return null;
    }
    return literals.get(Integer.parseInt(name.substring(Literal.PREFIX.length())));
  }

  /** Where a letter of the replaced text stands in the file; letters are counted from 1. */
  Place place(int position) {
    int at = Math.max(1, Math.min(position, origin.length)) - 1;
    return node.placeOf(origin[at]);
  }

  Problem problem(int position, String sentence) {
    return new Problem(place(position), sentence);
  }
}
