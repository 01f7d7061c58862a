package org.bearingline.shape.formula;

import java.util.Set;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/** An expression of a shape file, understood and with its dimension known. */
public final class Formula {

  private final String text;
  private final Place place;
  private final Term term;

  private Formula(String text, Place place, Term term) {
    this.text = text;
    this.place = place;
    this.term = term;
  }

  /** Reads an expression of the wanted dimension. */
  public static Formula read(YamlNode node, Scope scope, Dimension wanted) {
    FormulaText text = FormulaText.of(node);
    Term term = new TermBuilder(text, scope).build();
    Term fit = Fit.to(wanted, term, scope);
    if (!fit.dimension().equals(wanted)) {
      throw node.problem(
          wanted.words()
              + " is wanted here, but “"
              + text.written()
              + "” is "
              + term.dimension().words()
              + Fit.advice(wanted, term));
    }
    return new Formula(text.written(), node.place(), fit);
  }

  /** Reads an expression of whatever dimension it has. */
  public static Formula read(YamlNode node, Scope scope) {
    FormulaText text = FormulaText.of(node);
    return new Formula(text.written(), node.place(), new TermBuilder(text, scope).build());
  }

  /** The names an expression reads, in alphabetical order, before anything is known of them. */
  public static Set<String> namesIn(YamlNode node) {
    return SyntaxTree.names(FormulaText.of(node));
  }

  /** Whether a word has a meaning in expressions already: a function, a unit, or pi. */
  public static boolean reserved(String name) {
    return Function.byName().containsKey(name)
        || Set.of("pi", "in", "ft", "mm", "cm", "m", "deg").contains(name);
  }

  public static Formula constant(double value, Dimension dimension, Place place) {
    return new Formula(Double.toString(value), place, new Term.Constant(value, dimension, false));
  }

  public Dimension dimension() {
    return term.dimension();
  }

  /** In mm, mm², degrees or as a number. */
  public double value(Values values) {
    return term.in(values);
  }

  public boolean holds(Values values) {
    return term.in(values) != 0;
  }

  /** The value where it must be more than 0. */
  public double positive(Values values, String what) {
    double value = value(values);
    if (!(value > 0)) {
      throw problem(what + " must be more than 0, and “" + text + "” comes to " + plain(value));
    }
    return value;
  }

  /** The value where it must be 0 or more. */
  public double notNegative(Values values, String what) {
    double value = value(values);
    if (!(value >= 0)) {
      throw problem(what + " must not be negative, and “" + text + "” comes to " + plain(value));
    }
    return value;
  }

  /** The value as a whole number in a range. */
  public int whole(Values values, int from, int to, String what) {
    double value = value(values);
    if (value != Math.rint(value) || value < from || value > to) {
      throw problem(
          what
              + " must be a whole number from "
              + from
              + " to "
              + to
              + ", and “"
              + text
              + "” comes to "
              + plain(value));
    }
    return (int) value;
  }

  /** The names it reads. */
  public Set<String> names() {
    return term.names();
  }

  public String text() {
    return text;
  }

  public Place place() {
    return place;
  }

  public Problem problem(String sentence) {
    return new Problem(place, sentence);
  }

  private String plain(double value) {
    return Plain.of(value, dimension());
  }
}
