package org.bearingline.shape.formula;

import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.Token;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;

/** Turns a syntax tree into checked terms. */
final class TermBuilder {

  private final FormulaText text;
  private final Scope scope;
  private final Operators operators;

  TermBuilder(FormulaText text, Scope scope) {
    this.text = text;
    this.scope = scope;
    this.operators = new Operators(text, scope);
  }

  Term build() {
    return term(SyntaxTree.parse(text));
  }

  private Term term(ASTNode node) {
    Token token = node.getToken();
    return switch (token.getType()) {
      case NUMBER_LITERAL -> new Term.Constant(number(token), Dimension.NUMBER, true);
      case VARIABLE_OR_CONSTANT -> named(token);
      case PREFIX_OPERATOR -> operators.prefix(token, term(node.getParameters().get(0)));
      case INFIX_OPERATOR ->
          operators.infix(
              token, term(node.getParameters().get(0)), term(node.getParameters().get(1)));
      case FUNCTION -> call(token, node.getParameters());
      default -> throw problem(token, "“" + token.getValue() + "” means nothing in a shape file");
    };
  }

  private double number(Token token) {
    try {
      double value = Double.parseDouble(token.getValue());
      if (Math.abs(value) <= Term.LARGEST) {
        return value;
      }
    } catch (NumberFormatException odd) {
      throw problem(token, "“" + token.getValue() + "” is no number");
    }
    throw problem(token, "“" + token.getValue() + "” is larger than 1e12; nothing in a shop is");
  }

  private Term named(Token token) {
    String name = token.getValue();
    Literal literal = text.literal(name);
    if (literal != null) {
      return new Term.Constant(literal.value(), literal.dimension(), false);
    }
    if (scope.names().containsKey(name)) {
      return new Term.Named(name, scope.names().get(name));
    }
    if (scope.words().contains(name)) {
      return new Term.Constant(scope.words().indexOf(name), Dimension.WORD, false);
    }
    if (name.equals("pi")) {
      return new Term.Constant(Math.PI, Dimension.NUMBER, false);
    }
    List<String> known = new ArrayList<>(scope.names().keySet());
    known.addAll(scope.words());
    throw problem(
        token,
        "“"
            + name
            + "” is no measure and no derived value of this shape"
            + NearestName.hint(known, name));
  }

  private Term call(Token token, List<ASTNode> parameters) {
    Function function = Function.byName().get(token.getValue());
    if (parameters.size() < function.fewest() || parameters.size() > function.most()) {
      String wanted =
          function.fewest() == function.most()
              ? String.valueOf(function.fewest())
              : function.fewest() + " or more";
      throw problem(
          token,
          function.word() + " takes " + wanted + " values and is given " + parameters.size());
    }
    List<Term> terms = new ArrayList<>();
    parameters.forEach(parameter -> terms.add(term(parameter)));
    return switch (function.takes()) {
      case BRANCHES -> branches(token, terms);
      case SAME -> {
        List<Term> alike = alike(token, function, terms);
        yield applied(token, function, alike);
      }
      case SQUARE -> {
        if (!terms.get(0).dimension().isQuantity() || !terms.get(0).dimension().hasRoot()) {
          throw wants(token, function, "a number or an area", terms.get(0));
        }
        yield applied(token, function, terms);
      }
      case ANGLES -> {
        Term angle = Fit.to(Dimension.ANGLE, terms.get(0), scope);
        if (!angle.dimension().equals(Dimension.ANGLE)) {
          throw wants(token, function, "an angle, such as 30deg", terms.get(0));
        }
        yield applied(token, function, List.of(angle));
      }
      case NUMBERS -> {
        if (!terms.get(0).dimension().equals(Dimension.NUMBER)) {
          throw wants(
              token, function, "a plain number, such as a length over a length", terms.get(0));
        }
        yield applied(token, function, terms);
      }
    };
  }

  private Term applied(Token token, Function function, List<Term> terms) {
    return new Term.Applied(
        function.word(),
        text.place(token.getStartPosition()),
        function.result(terms.get(0).dimension()),
        terms,
        function::of);
  }

  private List<Term> alike(Token token, Function function, List<Term> terms) {
    Dimension shared =
        terms.stream()
            .map(Term::dimension)
            .filter(dimension -> !dimension.equals(Dimension.NUMBER))
            .findFirst()
            .orElse(Dimension.NUMBER);
    List<Term> fit = new ArrayList<>();
    for (Term term : terms) {
      Term one = Fit.to(shared, term, scope);
      if (!shared.isQuantity() || !one.dimension().equals(shared)) {
        throw problem(
            token,
            function.word()
                + " compares like with like, and here are "
                + shared.words()
                + " and "
                + term.dimension().words()
                + Fit.advice(shared, term));
      }
      fit.add(one);
    }
    return fit;
  }

  private Term branches(Token token, List<Term> terms) {
    if (!terms.get(0).dimension().equals(Dimension.TRUTH)) {
      throw problem(token, "“if” asks a yes-or-no first, such as if(steps == 2, a, b)");
    }
    Term yes = Fit.to(terms.get(2).dimension(), terms.get(1), scope);
    Term no = Fit.to(terms.get(1).dimension(), terms.get(2), scope);
    if (!yes.dimension().equals(no.dimension())) {
      throw problem(
          token,
          "both answers of “if” must be alike, and here are "
              + yes.dimension().words()
              + " and "
              + no.dimension().words());
    }
    return new Term.Either(terms.get(0), yes, no);
  }

  private Problem wants(Token token, Function function, String wanted, Term given) {
    return problem(
        token, function.word() + " wants " + wanted + ", and gets " + given.dimension().words());
  }

  private Problem problem(Token token, String sentence) {
    return text.problem(token.getStartPosition(), sentence);
  }
}
