package org.bearingline.shape.formula;

import java.util.Map;
import org.bearingline.length.Units;

/** Lets a written 0 be any quantity, and a bare number a length where the file names its units. */
final class Fit {

  private Fit() {}

  /** The term as the wanted dimension where that is allowed, else the term itself. */
  static Term to(Dimension wanted, Term term, Scope scope) {
    if (!term.isBare() || !term.dimension().equals(Dimension.NUMBER) || !wanted.isQuantity()) {
      return term;
    }
    double value = term.in(Values.of(Map.of()));
    if (value == 0) {
      return new Term.Constant(0, wanted, false);
    }
    if (wanted.equals(Dimension.LENGTH) && scope.bareUnits().isPresent()) {
      Units units = scope.bareUnits().get();
      return new Term.Constant(value * Scope.millimetres(units), Dimension.LENGTH, false);
    }
    return term;
  }

  /** A tail that says how to write what was wanted. */
  static String advice(Dimension wanted, Term term) {
    if (!term.dimension().equals(Dimension.NUMBER) || !term.isBare()) {
      return "";
    }
    if (wanted.equals(Dimension.LENGTH)) {
      return "; write its unit, such as 3/4in or 19mm, or say “units:” at the top of the file";
    }
    return wanted.equals(Dimension.ANGLE) ? "; write it as 30deg" : "";
  }
}
