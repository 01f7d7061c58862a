package org.bearingline.shape.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.operators.OperatorIfc;
import com.ezylang.evalex.parser.ParseException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Our operators bind as those that the expression library brings along. */
class KnownOperatorTest {

  private static final ExpressionConfiguration LIBRARY =
      ExpressionConfiguration.builder()
          .powerOfPrecedence(OperatorIfc.OPERATOR_PRECEDENCE_POWER_HIGHER)
          .build();

  private static final ExpressionConfiguration OURS =
      ExpressionConfiguration.builder().operatorDictionary(KnownOperator.all()).build();

  private static final List<String> INFIX =
      List.of(
          "+", "-", "*", "/", "%", "^", "=", "==", "!=", "<>", "<", "<=", ">", ">=", "&&", "||");

  private static final List<String> PREFIX = List.of("", "+", "-", "!");

  @Test
  void anyTwoOperatorsBindAsInTheLibrary() {
    for (String first : INFIX) {
      for (String second : INFIX) {
        for (String prefix : PREFIX) {
          String text = prefix + "a " + first + " b " + second + " " + prefix + "c";
          assertEquals(tree(text, LIBRARY), tree(text, OURS), text);
        }
      }
    }
  }

  /** The tree, or that there is none: a sign after a power is refused by both. */
  private static String tree(String text, ExpressionConfiguration grammar) {
    try {
      return new Expression(text, grammar).getAbstractSyntaxTree().toJSON();
    } catch (ParseException refused) {
      return refused.getMessage();
    }
  }
}
