package org.bearingline.length;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.bearingline.Seed;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
class LengthTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          3/4in      | 19.05
          1-1/2in    | 38.1
          1 1/2"     | 38.1
          6'         | 1828.8
          6' 3-1/2"  | 1917.7
          6'3-1/2"   | 1917.7
          6'-3 1/2"  | 1917.7
          6ft 3.5in  | 1917.7
          6' 3       | 1905
          0.75in     | 19.05
          .75"       | 19.05
          1.in       | 25.4
          19mm       | 19
          19 mm      | 19
          19MM       | 19
          2.5cm      | 25
          1 m        | 1000
          1½″        | 38.1
          1 ½ in     | 38.1
          ¾in        | 19.05
          6′ 3½″     | 1917.7
          ⅛"         | 3.175
          ⅞''        | 22.225
          1–1/2”     | 38.1
          3 / 4 in   | 19.05
          23/64in    | 9.128125
          6 inches   | 152.4
          2 feet     | 609.6
          0          | 0
          100m       | 100000
          ≈ 3/8 in   | 9.525
          """)
  void readsWhatMakersWrite(String text, double mm) {
    assertEquals(mm, Length.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "NaNmm",
        "Infinity",
        "∞mm",
        "1e12",
        "1e3mm",
        "",
        " ",
        "1/0in",
        "0/0in",
        "12",
        "1/2",
        "-3mm",
        "+3mm",
        "three",
        "3 4 in",
        "1//2in",
        "1/2/3in",
        "in",
        "1,5mm",
        "100.001m",
        "5miles",
        "1000000000000mm",
        "6\" 3'",
        "1-in",
        "--3mm",
        "0x10mm",
        "3mm 2mm",
        "1.5/2in",
        "1 1.5in",
        "\u0000mm"
      })
  void refusesInOneSentence(String text) {
    Problem problem = assertThrows(Problem.class, () -> Length.parse(text));
    String sentence = problem.getMessage();
    assertAll(
        () -> assertTrue(sentence.contains(text.strip()), sentence),
        () -> assertFalse(sentence.endsWith("."), sentence),
        () -> assertEquals("", problem.place().words()),
        () -> assertTrue(Length.find(text, LengthForm.WITH_UNITS).isEmpty()));
  }

  @Test
  void saysWhatToWriteInstead() {
    assertEquals("“12” has no unit; write 12in or 12mm", refusal("12"));
    assertEquals("“1/0in” divides by zero; write a fraction such as 1/2in", refusal("1/0in"));
    assertEquals("“-3mm” has a sign; write this length as a plain 3mm", refusal("-3mm"));
    assertEquals("“101m” is longer than 100 m, the most that is read; write less", refusal("101m"));
    assertEquals(
        "“wide” is not a length; write a number with its unit, such as 3/4in, 1-1/2in, 0.75in or"
            + " 19mm",
        refusal("wide"));
    assertEquals(
        "a length is missing; write a number with its unit, such as 3/4in, 1-1/2in, 0.75in or"
            + " 19mm",
        refusal(""));
    assertTrue(refusal("9".repeat(1_000_000)).length() < 200, "a long text is cut in the answer");
  }

  @Test
  void bareNumbersAndSignsWhereTheCallerSaysSo() {
    assertEquals(38.1, Length.parse("1-1/2", Units.INCH));
    assertEquals(12.5, Length.parse("12.5", Units.MM));
    assertEquals(25.4, Length.parse("1in", Units.MM));
    LengthForm signed = LengthForm.WITH_UNITS.withSign();
    assertEquals(-38.1, Length.parse("-1-1/2in", signed));
    assertEquals(-3, Length.parse("−3mm", signed));
    assertEquals(3, Length.parse("+ 3mm", signed));
    assertThrows(Problem.class, () -> Length.parse("-3", signed));
  }

  @ParameterizedTest
  @CsvSource({
    "19.05, INCH, 3/4 in", "38.1, INCH, 1-1/2 in", "25.4, INCH, 1 in", "0, INCH, 0 in",
    "19, INCH, ≈ 3/4 in", "0.01, INCH, ≈ 0 in", "-38.1, INCH, -1-1/2 in", "1828.8, INCH, 72 in",
    "9.128125, INCH, 23/64 in", "19, MM, 19 mm", "19.05, MM, 19.05 mm", "9.128125, MM, ≈ 9.13 mm",
    "2.5, MM, 2.5 mm", "-0.0012, MM, ≈ 0 mm", "1000, MM, 1000 mm", "0.0052, MM, ≈ 0.01 mm",
    "9.525, MM, 9.525 mm", "15.875, MM, 15.875 mm", "-3.175, MM, -3.175 mm"
  })
  void prints(double mm, Units units, String words) {
    assertEquals(words, Length.print(mm, units));
  }

  @Test
  void limitsAreRoundedToTheSafeSide() {
    assertEquals("9.52 mm", Length.printAtMost(9.525, Units.MM));
    assertEquals("9.53 mm", Length.printAtLeast(9.525, Units.MM));
    assertEquals("3/8 in", Length.printAtMost(9.525, Units.INCH));
    assertEquals("3/8 in", Length.printAtLeast(9.525, Units.INCH));
    assertEquals("23/64 in", Length.printAtMost(9.5, Units.INCH));
  }

  @Test
  void printsAreas() {
    assertEquals("1 in²", Length.printArea(645.16, Units.INCH));
    assertEquals("≈ 1.55 in²", Length.printArea(1000, Units.INCH));
    assertEquals("1000 mm²", Length.printArea(1000, Units.MM));
    assertEquals("≈ 0.000123 in²", Length.printArea(0.0791, Units.INCH));
    assertEquals("≈ 0.215 mm²", Length.printArea(0.2146, Units.MM));
    assertEquals("0 mm²", Length.printArea(0, Units.MM));
  }

  @Property(seed = Seed.FIXED)
  boolean inchesComeBackWithinHalfAStep(@ForAll @DoubleRange(min = 0, max = 99_000) double mm) {
    return Math.abs(Length.parse(Length.print(mm, Units.INCH)) - mm) <= 25.4 / 128 + 1e-9;
  }

  @Property(seed = Seed.FIXED)
  boolean millimetresComeBackWithinHalfAStep(
      @ForAll @DoubleRange(min = 0, max = 99_000) double mm) {
    return Math.abs(Length.parse(Length.print(mm, Units.MM)) - mm) <= 0.005 + 1e-9;
  }

  @Property(seed = Seed.FIXED)
  void sixtyFourthsAreExact(@ForAll @IntRange(min = 0, max = 200_000) int steps) {
    double mm = steps * 25.4 / 64;
    String words = Length.print(mm, Units.INCH);
    assertFalse(words.contains("≈"), words);
    assertEquals(mm, Length.parse(words), 1e-12 * Math.max(1, mm));
  }

  @Property(seed = Seed.FIXED)
  boolean limitsEncloseTheLength(
      @ForAll @DoubleRange(min = 0, max = 9_000) double mm, @ForAll Units units) {
    return Length.parse(Length.printAtMost(mm, units)) <= mm + 1e-5
        && Length.parse(Length.printAtLeast(mm, units)) >= mm - 1e-5;
  }

  private static String refusal(String text) {
    return assertThrows(Problem.class, () -> Length.parse(text)).getMessage();
  }

  @Test
  void whatIsOnlyGaugedIsToldRoughly() {
    assertEquals("≈ 2820 mm", Length.printRough(2820.87, Units.MM));
    assertEquals("≈ 60 mm", Length.printRough(60.29, Units.MM));
    assertEquals("≈ 14.5 mm", Length.printRough(14.29, Units.MM));
    assertEquals("152 mm", Length.printRough(152, Units.MM));
    assertEquals("≈ 39-3/8 in", Length.printRough(1000, Units.INCH));
    assertEquals("1-1/16 in", Length.printRough(17 * 25.4 / 16, Units.INCH));
    assertEquals("≈ 1.6 in²", Length.printRoughArea(1000, Units.INCH));
    assertEquals("under 0.001 in²", Length.printRoughArea(0.6, Units.INCH));
    assertEquals("0 mm²", Length.printRoughArea(0, Units.MM));
    assertEquals("≈ 1200 mm²", Length.printRoughArea(1234, Units.MM));
  }

  /** Nobody reads a hundredth of a millimetre off a drawing, or a sixty-fourth on 27 feet. */
  @Test
  void aDrawingSaysNoMoreThanIsMeasured() {
    assertEquals("≈ 69.2 mm", Length.printDrawn(69.1687, Units.MM));
    assertEquals("9.525 mm", Length.printDrawn(9.525, Units.MM));
    assertEquals("120 mm", Length.printDrawn(120, Units.MM));
    assertEquals("≈ 323 in", Length.printDrawn(323.047 * 25.4, Units.INCH));
    assertEquals("≈ 13-35/64 in", Length.printDrawn(13.546 * 25.4, Units.INCH));
    assertEquals("≈ 0.04 mm", Length.printDrawn(0.0412, Units.MM));
  }
}
