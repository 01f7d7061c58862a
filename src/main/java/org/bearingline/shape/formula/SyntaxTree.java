package org.bearingline.shape.formula;

import com.ezylang.evalex.BaseException;
import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.FunctionDictionaryIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.FunctionIfc;
import com.ezylang.evalex.functions.FunctionParameterDefinition;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;
import com.ezylang.evalex.parser.Token;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.problem.NearestName;

/** The expression library, used to parse and for nothing else: it evaluates nothing. */
final class SyntaxTree {

  private static final Pattern CALL = Pattern.compile("([A-Za-z_][A-Za-z0-9_]*)\\h*\\(");

  private static final ExpressionConfiguration GRAMMAR =
      ExpressionConfiguration.builder()
          .functionDictionary(new KnownFunctions())
          .operatorDictionary(KnownOperator.all())
          // Nothing is evaluated, so the default conversions are not read.
          .evaluationValueConverter(SyntaxTree::convertNothing)
          .defaultConstants(Map.of())
          // Neither is used; asking the machine for them would load its tables of zones.
          .zoneId(ZoneOffset.UTC)
          .locale(Locale.ROOT)
          .arraysAllowed(false)
          .structuresAllowed(false)
          .binaryAllowed(false)
          .implicitMultiplicationAllowed(false)
          .build();

  private SyntaxTree() {}

  static ASTNode parse(FormulaText text) {
    refuseUnknownFunctions(text);
    try {
      return new Expression(text.replaced(), GRAMMAR).getAbstractSyntaxTree();
    } catch (ParseException unreadable) {
      throw text.problem(
          unreadable.getStartPosition(),
          "“" + text.written() + "” cannot be read here: " + reason(unreadable));
    }
  }

  /** Names of measures and derived values; pi and placeholders are left out. */
  static Set<String> names(FormulaText text) {
    Set<String> names = new TreeSet<>();
    collect(parse(text), text, names);
    return names;
  }

  private static void collect(ASTNode node, FormulaText text, Set<String> names) {
    Token token = node.getToken();
    String name = token.getValue();
    if (token.getType() == Token.TokenType.VARIABLE_OR_CONSTANT
        && text.literal(name) == null
        && !name.equals("pi")) {
      names.add(name);
    }
    node.getParameters().forEach(parameter -> collect(parameter, text, names));
  }

  private static EvaluationValue convertNothing(Object value, ExpressionConfiguration grammar) {
    throw new UnsupportedOperationException("formulas are evaluated from their checked terms");
  }

  private static void refuseUnknownFunctions(FormulaText text) {
    Matcher call = CALL.matcher(text.replaced());
    while (call.find()) {
      String name = call.group(1);
      if (!Function.byName().containsKey(name)) {
        throw text.problem(
            call.start() + 1,
            "“"
                + name
                + "” is no function that a shape file knows"
                + NearestName.hint(Function.byName().keySet(), name));
      }
    }
  }

  private static String reason(BaseException unreadable) {
    String message = String.valueOf(unreadable.getMessage()).strip();
    if (message.isEmpty()) {
      return "it breaks off";
    }
    return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
  }

  /** Tells the parser which names are functions. */
  private static final class KnownFunctions implements FunctionDictionaryIfc {
    @Override
    public void addFunction(String name, FunctionIfc function) {
      throw new UnsupportedOperationException("the functions of shape files are fixed");
    }

    @Override
    public FunctionIfc getFunction(String name) {
      return Function.byName().containsKey(name) ? new ParsedOnly() : null;
    }
  }

  /** Stands in the tree for a call; how many values it takes is checked with its dimensions. */
  private static final class ParsedOnly implements FunctionIfc {
    @Override
    public List<FunctionParameterDefinition> getFunctionParameterDefinitions() {
      return List.of(FunctionParameterDefinition.builder().name("value").isVarArg(true).build());
    }

    @Override
    public boolean hasVarArgs() {
      return true;
    }

    @Override
    public EvaluationValue evaluate(Expression e, Token token, EvaluationValue... values)
        throws EvaluationException {
      throw new EvaluationException(token, "formulas are evaluated from their checked terms");
    }

    @Override
    public void validatePreEvaluation(Token token, EvaluationValue... values) {
      // nothing is evaluated
    }
  }
}
