package org.bearingline.shape.formula;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.OperatorDictionaryIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.operators.OperatorIfc;
import com.ezylang.evalex.parser.Token;
import java.util.Map;

/**
 * An operator as the parser of the expression library needs it: where it stands and how it binds.
 * What it does is said by {@link Operators}. The library's own operators bind the same, but reading
 * them takes longer than reading a shape.
 *
 * @param isPrefix whether it stands before its one operand; otherwise it stands between two
 * @param getPrecedence the operator with the higher number binds first
 * @param isLeftAssociative whether {@code a op b op c} is {@code (a op b) op c}
 */
record KnownOperator(boolean isPrefix, int getPrecedence, boolean isLeftAssociative)
    implements OperatorIfc {

  private static final KnownOperator SIGN =
      new KnownOperator(true, OPERATOR_PRECEDENCE_UNARY, false);

  private static final Map<String, KnownOperator> PREFIX =
      Map.of(
          "+", SIGN,
          "-", SIGN,
          "!", new KnownOperator(true, OPERATOR_PRECEDENCE_UNARY, true));

  private static final Map<String, KnownOperator> INFIX =
      Map.ofEntries(
          Map.entry("||", infix(OPERATOR_PRECEDENCE_OR)),
          Map.entry("&&", infix(OPERATOR_PRECEDENCE_AND)),
          Map.entry("=", infix(OPERATOR_PRECEDENCE_EQUALITY)),
          Map.entry("==", infix(OPERATOR_PRECEDENCE_EQUALITY)),
          Map.entry("!=", infix(OPERATOR_PRECEDENCE_EQUALITY)),
          Map.entry("<>", infix(OPERATOR_PRECEDENCE_EQUALITY)),
          Map.entry("<", infix(OPERATOR_PRECEDENCE_COMPARISON)),
          Map.entry("<=", infix(OPERATOR_PRECEDENCE_COMPARISON)),
          Map.entry(">", infix(OPERATOR_PRECEDENCE_COMPARISON)),
          Map.entry(">=", infix(OPERATOR_PRECEDENCE_COMPARISON)),
          Map.entry("+", infix(OPERATOR_PRECEDENCE_ADDITIVE)),
          Map.entry("-", infix(OPERATOR_PRECEDENCE_ADDITIVE)),
          Map.entry("*", infix(OPERATOR_PRECEDENCE_MULTIPLICATIVE)),
          Map.entry("/", infix(OPERATOR_PRECEDENCE_MULTIPLICATIVE)),
          Map.entry("%", infix(OPERATOR_PRECEDENCE_MULTIPLICATIVE)),
          // −n² is −(n²), as in mathematics.
          Map.entry("^", new KnownOperator(false, OPERATOR_PRECEDENCE_POWER_HIGHER, false)));

  private static KnownOperator infix(int precedence) {
    return new KnownOperator(false, precedence, true);
  }

  /** Every operator that an expression may be written with. */
  static OperatorDictionaryIfc all() {
    return new All();
  }

  @Override
  public int getPrecedence(ExpressionConfiguration grammar) {
    return getPrecedence;
  }

  @Override
  public boolean isInfix() {
    return !isPrefix;
  }

  @Override
  public boolean isPostfix() {
    return false;
  }

  @Override
  public boolean isOperandLazy() {
    return false;
  }

  @Override
  public EvaluationValue evaluate(Expression e, Token token, EvaluationValue... values)
      throws EvaluationException {
    throw new EvaluationException(token, "formulas are evaluated from their checked terms");
  }

  private static final class All implements OperatorDictionaryIfc {
    @Override
    public void addOperator(String sign, OperatorIfc operator) {
      throw new UnsupportedOperationException("the operators of shape files are fixed");
    }

    @Override
    public OperatorIfc getPrefixOperator(String sign) {
      return PREFIX.get(sign);
    }

    @Override
    public OperatorIfc getPostfixOperator(String sign) {
      return null;
    }

    @Override
    public OperatorIfc getInfixOperator(String sign) {
      return INFIX.get(sign);
    }
  }
}
