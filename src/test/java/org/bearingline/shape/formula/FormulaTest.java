package org.bearingline.shape.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.bearingline.Seed;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expressions against values worked by hand; lengths in mm, angles in degrees. */
class FormulaTest {

  private static final Map<String, Dimension> NAMES = new LinkedHashMap<>();

  static {
    NAMES.put("a", Dimension.LENGTH);
    NAMES.put("b", Dimension.LENGTH);
    NAMES.put("n", Dimension.NUMBER);
    NAMES.put("w", Dimension.ANGLE);
    NAMES.put("kind", Dimension.WORD);
  }

  /** a = 100 mm, b = 40 mm, n = 3, w = 30°, kind = curved. */
  private static final Values VALUES =
      Values.of(Map.of("a", 100.0, "b", 40.0, "n", 3.0, "w", 30.0, "kind", 1.0));

  private static YamlNode node(String text) {
    return YamlFile.read("f.yaml", "x: \"" + text.replace("\"", "\\\"") + "\"").field("x");
  }

  private static Scope scope(Optional<Units> bare) {
    return new Scope(NAMES, List.of("straight", "curved"), bare);
  }

  private static Formula formula(String text) {
    return Formula.read(node(text), scope(Optional.empty()));
  }

  private static double value(String text) {
    return formula(text).value(VALUES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "a + b                  | 140",
        "a - b / 2              | 80",
        "-b + a                 | 60",
        "2 * a                  | 200",
        "n ^ 2                  | 9",
        "-n ^ 2                 | -9",
        "0 - n ^ 2              | -9",
        "a / b                  | 2.5",
        "a * b                  | 4000",
        "a ^ 2                  | 10000",
        "sqrt(a * b * 4)        | 126.49110640673517",
        "sqrt(a ^ 2 + b ^ 2)    | 107.70329614269008",
        "hypot(a, b)            | 107.70329614269008",
        "min(a, b, 1in)         | 25.4",
        "max(a, 5in)            | 127",
        "max(0, b - a)          | 0",
        "abs(b - a)             | 60",
        "sin(w)                 | 0.5",
        "cos(60deg)             | 0.5",
        "tan(45°)               | 1",
        "sin(180deg)            | 0",
        "acos(b / a * 1.25)     | 60",
        "atan2(a, a)            | 45",
        "asin(1)                | 90",
        "radians(180deg) / pi   | 1",
        "w * 2 + 15deg          | 75",
        "if(n == 3, a, b)       | 100",
        "if(n > 3, a, b)        | 40",
        "if(kind == curved, 1, 2)   | 1",
        "if(kind != curved, 1, 2)   | 2",
        "round(2.6)             | 3",
        "floor(a / b)           | 2",
        "ceiling(a / b)         | 3",
        "(a + b) * (a - b) / a  | 84",
        "a - 0                  | 100",
        "1e2 * n                | 300",
      })
  void worksLikeArithmeticByHand(String text, double expected) {
    assertEquals(expected, value(text), 1e-12 * Math.max(1, Math.abs(expected)), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "3/4in              | 19.05",
        "1-1/2in            | 38.1",
        "1 1/2\"            | 38.1",
        "6'                 | 1828.8",
        "6' 3-1/2\"         | 1917.7",
        "0.75in             | 19.05",
        ".5in               | 12.7",
        "19mm               | 19",
        "2.5cm              | 25",
        "1m                 | 1000",
        "a-1/2in            | 87.3",
        "2in-1/2in          | 38.1",
        "2-1/2in            | 63.5",
        "a - 2-1/2in        | 36.5",
        "a/1-1/2in          | 2.62467191601049868",
        "3in/2              | 38.1",
        "2*3/4in            | 38.1",
        "3/4 in + 1mm       | 20.05",
        "(1in)+(b)          | 65.4",
        "b+1in*2            | 90.8",
      })
  void readsLengthsAsAMakerWritesThem(String text, double expected) {
    assertEquals(expected, value(text), 1e-9, text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a + 1      | f.yaml:1:7: a length and a number cannot be added; write its unit, such as 3/4in or 19mm, or say “units:” at the top of the file",
        "a - n      | f.yaml:1:7: a length and a number cannot be subtracted from each other",
        "a * b + a  | f.yaml:1:11: an area and a length cannot be added",
        "a < 5      | f.yaml:1:7: a length and a number cannot be compared; write its unit, such as 3/4in or 19mm, or say “units:” at the top of the file",
        "sin(n)     | f.yaml:1:5: sin wants an angle, such as 30deg, and gets a number",
        "sin(a)     | f.yaml:1:5: sin wants an angle, such as 30deg, and gets a length",
        "sqrt(a)    | f.yaml:1:5: sqrt wants a number or an area, and gets a length",
        "acos(a)    | f.yaml:1:5: acos wants a plain number, such as a length over a length, and gets a length",
        "min(a, n)  | f.yaml:1:5: min compares like with like, and here are a length and a number",
        "hypot(a)   | f.yaml:1:5: hypot takes 2 values and is given 1",
        "a ^ n      | f.yaml:1:7: a length may be raised to a written 2 or 3 only; use sqrt for a root",
        "a + w      | f.yaml:1:7: a length and an angle cannot be added",
        "kind + a   | f.yaml:1:10: “+” works on quantities, not on a word",
        "kind == 1  | f.yaml:1:10: a word and a number cannot be compared",
        "a && b     | f.yaml:1:7: “&&” joins comparisons, not a length",
        "a % b      | f.yaml:1:7: “%” is no operator of shape files",
        "aa + b     | f.yaml:1:5: “aa” is no measure and no derived value of this shape; did you mean a?",
        "b + lenght(a) | f.yaml:1:9: “lenght” is no function that a shape file knows",
        "sqr(a * b) | f.yaml:1:5: “sqr” is no function that a shape file knows; did you mean sqrt?",
        "if(n == 3, a, w) | f.yaml:1:5: both answers of “if” must be alike, and here are a length and an angle",
        "if(n, a, b) | f.yaml:1:5: “if” asks a yes-or-no first, such as if(steps == 2, a, b)",
        "1e300 * a  | f.yaml:1:5: “1e300” is larger than 1e12; nothing in a shop is",
      })
  void refusesWhatDoesNotGoTogether(String text, String spoken) {
    Problem problem = assertThrows(Problem.class, () -> formula(text));
    assertEquals(spoken, problem.spoken());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a / (b - 40mm)  | f.yaml:1:7: this divides by zero",
        "a / 0           | f.yaml:1:7: this divides by zero",
        "sqrt(b*b - a*a) | f.yaml:1:5: “sqrt” has no value here; check the measures it is given",
        "acos(a / b)     | f.yaml:1:5: “acos” has no value here; check the measures it is given",
        "n ^ 99          | f.yaml:1:7: “^” comes to more than 1e12 here; check the measures it is given",
        "tan(90deg)      | f.yaml:1:5: “tan” comes to more than 1e12 here; check the measures it is given",
      })
  void refusesValuesThatAreNone(String text, String spoken) {
    Formula formula = formula(text);
    Problem problem = assertThrows(Problem.class, () -> formula.value(VALUES));
    assertEquals(spoken, problem.spoken());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a +",
        "(a",
        "a b",
        "a)",
        "* a",
        "a + + * b",
        "[a]",
        "a.b",
        "'x'",
        "0x1F",
        "2a",
        ")("
      })
  void refusesWhatIsNoExpressionWithItsPlace(String text) {
    Problem problem = assertThrows(Problem.class, () -> formula(text));
    assertTrue(problem.spoken().startsWith("f.yaml:1:"), problem.spoken());
  }

  @Test
  void columnsCountInTheTextAsWritten() {
    Problem problem = assertThrows(Problem.class, () -> formula("1-1/2in + 3/4in + zz"));
    assertTrue(problem.spoken().startsWith("f.yaml:1:23: “zz”"), problem.spoken());
  }

  @Test
  void bareNumbersAreLengthsWhereTheFileNamesItsUnits() {
    Scope inches = scope(Optional.of(Units.INCH));
    assertEquals(125.4, Formula.read(node("a + 1"), inches).value(VALUES), 1e-12);
    assertEquals(50.8, Formula.read(node("2"), inches, Dimension.LENGTH).value(VALUES), 1e-12);
    assertEquals(50, Formula.read(node("a / 2"), inches, Dimension.LENGTH).value(VALUES), 1e-12);
    assertThrows(Problem.class, () -> Formula.read(node("a + n"), inches));
    assertThrows(Problem.class, () -> Formula.read(node("a + a / b"), inches));
  }

  @Test
  void theOtherBranchIsNotWorkedOut() {
    assertEquals(100, value("if(b > 0, a, a / 0)"), 1e-12);
    assertEquals(1, value("if(n == 3 || a / (b - 40mm) > 1, 1, 2)"), 1e-12);
    assertEquals(2, value("if(n == 2 && a / (b - 40mm) > 1, 1, 2)"), 1e-12);
  }

  @Property(seed = Seed.FIXED)
  void sumsOfSixtyFourthsAgreeWithWholeNumberArithmetic(
      @ForAll @IntRange(min = 1, max = 40) int whole,
      @ForAll @IntRange(min = 1, max = 63) int sixtyFourths,
      @ForAll @IntRange(min = 1, max = 500) int tenths) {
    String text = whole + "-" + sixtyFourths + "/64in + " + tenths / 10 + "." + tenths % 10 + "mm";
    double expected = (whole * 64 + sixtyFourths) * 25.4 / 64 + tenths / 10.0;
    assertEquals(expected, value(text), 1e-9, text);
  }
}
