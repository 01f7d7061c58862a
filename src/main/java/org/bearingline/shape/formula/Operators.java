package org.bearingline.shape.formula;

import com.ezylang.evalex.parser.Token;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import org.bearingline.problem.Problem;

/** Operators with the dimensions they allow. */
final class Operators {

  /** Values nearer than this share of the larger one are equal: lengths in inches round. */
  private static final double EQUAL = 1e-12;

  private final FormulaText text;
  private final Scope scope;

  Operators(FormulaText text, Scope scope) {
    this.text = text;
    this.scope = scope;
  }

  Term prefix(Token token, Term operand) {
    return switch (token.getValue()) {
      case "-" -> sign(token, operand, -1);
      case "+" -> sign(token, operand, 1);
      case "!" -> {
        truth(token, operand);
        yield applied(token, Dimension.TRUTH, v -> v[0] != 0 ? 0 : 1, operand);
      }
      default -> throw unknown(token);
    };
  }

  private Term sign(Token token, Term operand, double factor) {
    quantity(token, operand);
    return applied(token, operand.dimension(), v -> factor * v[0], operand);
  }

  Term infix(Token token, Term a, Term b) {
    return switch (token.getValue()) {
      case "+" -> additive(token, a, b, (x, y) -> x + y);
      case "-" -> additive(token, a, b, (x, y) -> x - y);
      case "*" -> {
        quantity(token, a);
        quantity(token, b);
        yield applied(token, a.dimension().times(b.dimension()), v -> v[0] * v[1], a, b);
      }
      case "/" -> {
        quantity(token, a);
        quantity(token, b);
        yield applied(
            token,
            a.dimension().over(b.dimension()),
            v -> v[1] == 0 ? Double.NaN : v[0] / v[1],
            a,
            b);
      }
      case "^" -> power(token, a, b);
      case "==", "=" -> compared(token, a, b, (x, y) -> equal(x, y) ? 1 : 0);
      case "!=", "<>" -> compared(token, a, b, (x, y) -> equal(x, y) ? 0 : 1);
      case "<" -> ordered(token, a, b, (x, y) -> x < y && !equal(x, y) ? 1 : 0);
      case ">" -> ordered(token, a, b, (x, y) -> x > y && !equal(x, y) ? 1 : 0);
      case "<=" -> ordered(token, a, b, (x, y) -> x <= y || equal(x, y) ? 1 : 0);
      case ">=" -> ordered(token, a, b, (x, y) -> x >= y || equal(x, y) ? 1 : 0);
      case "&&" -> joined(token, a, b, true);
      case "||" -> joined(token, a, b, false);
      default -> throw unknown(token);
    };
  }

  private static boolean equal(double x, double y) {
    return Math.abs(x - y) <= EQUAL * Math.max(Math.abs(x), Math.abs(y));
  }

  private Term additive(Token token, Term a, Term b, DoubleBinaryOperator rule) {
    quantity(token, a);
    quantity(token, b);
    Term left = Fit.to(b.dimension(), a, scope);
    Term right = Fit.to(a.dimension(), b, scope);
    if (!left.dimension().equals(right.dimension())) {
      throw unlike(token, token.getValue().equals("+") ? "added" : "subtracted", a, b);
    }
    return binary(token, left.dimension(), left, right, rule);
  }

  private Term ordered(Token token, Term a, Term b, DoubleBinaryOperator rule) {
    quantity(token, a);
    quantity(token, b);
    return compared(token, a, b, rule);
  }

  private Term compared(Token token, Term a, Term b, DoubleBinaryOperator rule) {
    Term left = Fit.to(b.dimension(), a, scope);
    Term right = Fit.to(a.dimension(), b, scope);
    if (!left.dimension().equals(right.dimension())) {
      throw unlike(token, "compared", a, b);
    }
    return binary(token, Dimension.TRUTH, left, right, rule);
  }

  private Term joined(Token token, Term a, Term b, boolean all) {
    truth(token, a);
    truth(token, b);
    return new Term.Joined(a, b, all);
  }

  private Term power(Token token, Term base, Term exponent) {
    quantity(token, base);
    if (!exponent.dimension().equals(Dimension.NUMBER)) {
      throw problem(token, "an exponent is a plain number, not " + exponent.dimension().words());
    }
    if (base.dimension().equals(Dimension.NUMBER)) {
      return applied(token, Dimension.NUMBER, v -> Math.pow(v[0], v[1]), base, exponent);
    }
    double written = exponent.isBare() ? exponent.in(Values.of(Map.of())) : Double.NaN;
    if (written != 2 && written != 3) {
      throw problem(
          token,
          base.dimension().words()
              + " may be raised to a written 2 or 3 only; use sqrt for a root");
    }
    return applied(
        token, base.dimension().power((int) written), v -> Math.pow(v[0], v[1]), base, exponent);
  }

  private Term binary(Token token, Dimension to, Term a, Term b, DoubleBinaryOperator rule) {
    return applied(token, to, v -> rule.applyAsDouble(v[0], v[1]), a, b);
  }

  private Term applied(Token token, Dimension to, ToDoubleFunction<double[]> rule, Term... terms) {
    return new Term.Applied(
        token.getValue(), text.place(token.getStartPosition()), to, List.of(terms), rule);
  }

  private void quantity(Token token, Term term) {
    if (!term.dimension().isQuantity()) {
      throw problem(
          token,
          "“" + token.getValue() + "” works on quantities, not on " + term.dimension().words());
    }
  }

  private void truth(Token token, Term term) {
    if (!term.dimension().equals(Dimension.TRUTH)) {
      throw problem(
          token, "“" + token.getValue() + "” joins comparisons, not " + term.dimension().words());
    }
  }

  private Problem unlike(Token token, String verb, Term a, Term b) {
    String advice =
        a.dimension().equals(Dimension.NUMBER)
            ? Fit.advice(b.dimension(), a)
            : Fit.advice(a.dimension(), b);
    return problem(
        token,
        a.dimension().words()
            + " and "
            + b.dimension().words()
            + " cannot be "
            + verb
            + (verb.equals("subtracted") ? " from each other" : "")
            + advice);
  }

  private Problem unknown(Token token) {
    return problem(token, "“" + token.getValue() + "” is no operator of shape files");
  }

  private Problem problem(Token token, String sentence) {
    return text.problem(token.getStartPosition(), sentence);
  }
}
