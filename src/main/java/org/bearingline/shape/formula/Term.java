package org.bearingline.shape.formula;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** A checked piece of a formula. */
sealed interface Term {

  /** No length of a shop and no number made of such lengths comes near this. */
  double LARGEST = 1e12;

  Dimension dimension();

  double in(Values values);

  /** Whether it is made of written numbers alone, so that units could be meant by them. */
  boolean isBare();

  /** The names it reads. */
  Set<String> names();

  /** A written value. */
  record Constant(double value, Dimension dimension, boolean isBare) implements Term {
    @Override
    public double in(Values values) {
      return value;
    }

    @Override
    public Set<String> names() {
      return Set.of();
    }
  }

  /** A measure, a derived value or a counter. */
  record Named(String name, Dimension dimension) implements Term {
    @Override
    public double in(Values values) {
      return values.get(name);
    }

    @Override
    public boolean isBare() {
      return false;
    }

    @Override
    public Set<String> names() {
      return Set.of(name);
    }
  }

  /** An operator or function over its operands; a result that is not finite is refused. */
  record Applied(
      String what,
      Place place,
      Dimension dimension,
      List<Term> operands,
      ToDoubleFunction<double[]> rule)
      implements Term {

    @Override
    public double in(Values values) {
      double[] given = new double[operands.size()];
      for (int i = 0; i < given.length; i++) {
        given[i] = operands.get(i).in(values);
      }
      double result = rule.applyAsDouble(given);
      if (Double.isNaN(result) || Math.abs(result) > LARGEST) {
        throw new Problem(place, complaint(result, given));
      }
      return result;
    }

    private String complaint(double result, double[] given) {
      if (what.equals("/") && given[1] == 0) {
        return "this divides by zero";
      }
      if (Double.isNaN(result)) {
        return "“" + what + "” has no value here; check the measures it is given";
      }
      return "“" + what + "” comes to more than 1e12 here; check the measures it is given";
    }

    @Override
    public boolean isBare() {
      return operands.stream().allMatch(Term::isBare);
    }

    @Override
    public Set<String> names() {
      Set<String> all = new TreeSet<>();
      operands.forEach(operand -> all.addAll(operand.names()));
      return all;
    }
  }

  /** One of two terms, the other left unread. */
  record Either(Term condition, Term yes, Term no) implements Term {
    @Override
    public Dimension dimension() {
      return yes.dimension();
    }

    @Override
    public double in(Values values) {
      return condition.in(values) != 0 ? yes.in(values) : no.in(values);
    }

    @Override
    public boolean isBare() {
      return false;
    }

    @Override
    public Set<String> names() {
      Set<String> all = new TreeSet<>(condition.names());
      all.addAll(yes.names());
      all.addAll(no.names());
      return all;
    }
  }

  /** “and” and “or”: the second operand is read only where it matters. */
  record Joined(Term first, Term second, boolean all) implements Term {
    @Override
    public Dimension dimension() {
      return Dimension.TRUTH;
    }

    @Override
    public double in(Values values) {
      boolean one = first.in(values) != 0;
      return (one == all ? second.in(values) != 0 : one) ? 1 : 0;
    }

    @Override
    public boolean isBare() {
      return false;
    }

    @Override
    public Set<String> names() {
      Set<String> both = new TreeSet<>(first.names());
      both.addAll(second.names());
      return both;
    }
  }
}
