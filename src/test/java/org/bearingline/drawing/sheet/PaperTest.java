package org.bearingline.drawing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {

  /** ISO 216:2007, trimmed sizes of the A series in mm. */
  @ParameterizedTest
  @CsvSource({"A4, 210, 297", "A3, 297, 420", "A2, 420, 594", "A1, 594, 841", "A0, 841, 1189"})
  void isoSheets(String name, double width, double height) {
    Paper paper = Paper.parse(name);
    assertEquals(width, paper.width(), 1e-9);
    assertEquals(height, paper.height().orElseThrow(), 1e-9);
  }

  /** ISO 216: A0 holds a square metre, each next size half, sides as 1 to √2, rounded to mm. */
  @Test
  void theIsoSeriesHalvesAndKeepsItsShape() {
    Paper larger = Paper.parse("A0");
    assertEquals(1e6, larger.width() * larger.height().orElseThrow(), 1000);
    for (String name : new String[] {"A1", "A2", "A3", "A4"}) {
      Paper paper = Paper.parse(name);
      assertEquals(larger.width(), paper.height().orElseThrow(), 1e-9);
      assertEquals(Math.floor(larger.height().orElseThrow() / 2), paper.width(), 1e-9);
      assertEquals(Math.sqrt(2), paper.height().orElseThrow() / paper.width(), 0.005);
      larger = paper;
    }
  }

  /** ASME Y14.1-2020, sizes A (Letter) to E in inches; Legal is common practice. */
  @ParameterizedTest
  @CsvSource({
    "Letter, 8.5, 11",
    "Tabloid, 11, 17",
    "ANSI C, 17, 22",
    "ANSI D, 22, 34",
    "ANSI E, 34, 44",
    "Legal, 8.5, 14"
  })
  void inchSheets(String name, double width, double height) {
    Paper paper = Paper.parse(name);
    assertEquals(width * 25.4, paper.width(), 1e-9);
    assertEquals(height * 25.4, paper.height().orElseThrow(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"roll:24in, 609.6", "roll:36in, 914.4", "roll:610mm, 610", "ROLL:914mm, 914"})
  void rolls(String name, double width) {
    Paper paper = Paper.parse(name);
    assertTrue(paper.isRoll());
    assertEquals(width, paper.width(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"12inx18in, 304.8, 457.2", "500mm x 300mm, 300, 500", "18in×12in, 304.8, 457.2"})
  void customSizes(String name, double width, double height) {
    Paper paper = Paper.parse(name);
    assertEquals(width, paper.width(), 1e-9);
    assertEquals(height, paper.height().orElseThrow(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4", " A4 ", "ansi-c", "ANSI_C", "letter", "LETTER"})
  void namesAreReadGenerously(String name) {
    assertFalse(Paper.parse(name).isRoll());
  }

  @Test
  void everyNamedPaperIsReadByItsName() {
    for (Paper paper : Paper.named()) {
      assertEquals(paper, Paper.parse(paper.name()));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Leter, did you mean Letter?",
    "tabloyd, did you mean Tabloid?",
    "quarto, known are A4",
    "roll:big, roll:big",
    "1mmx2mm, out of range",
    "10mx20m, 10mx20m",
    "9999mmx100mm, out of range",
    "210x297, 210x297",
    "x, known are",
    "'', known are"
  })
  void wrongPaperIsAnsweredInOneSentence(String text, String part) {
    Problem problem = assertThrows(Problem.class, () -> Paper.parse(text));
    assertTrue(problem.spoken().contains(part), problem::spoken);
    assertTrue(problem.spoken().startsWith("--paper: "), problem::spoken);
  }

  @Test
  void officePaperFollowsTheUnits() {
    assertEquals("Letter", Paper.parse("ANSI C").office().name());
    assertEquals("Letter", Paper.parse("roll:36in").office().name());
    assertEquals("Letter", Paper.parse("12inx18in").office().name());
    assertEquals("A4", Paper.parse("A0").office().name());
    assertEquals("A4", Paper.parse("roll:914mm").office().name());
    assertEquals("A4", Paper.parse("300mmx500mm").office().name());
  }

  @ParameterizedTest
  @CsvSource({
    "'99.4,99.8', 99.4, 99.8",
    "'100 , 100.5', 100, 100.5",
    "'99.4mm,99.8 mm', 99.4, 99.8"
  })
  void printedBarsAreRead(String text, double x, double y) {
    assertEquals(new PrintCorrection(x, y), PrintCorrection.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"99", "a,b", "99,99,99", "", "-99,99", "NaN,99", "89.9,100", "100,110.1"})
  void wrongMeasuresOfTheBarsAreRefused(String text) {
    Problem problem = assertThrows(Problem.class, () -> PrintCorrection.parse(text));
    assertTrue(problem.spoken().startsWith("--printed: "), problem::spoken);
  }

  @Test
  void impossibleMarginsAndOverlapsAreRefused() {
    assertThrows(Problem.class, () -> Margins.all(-1));
    assertThrows(Problem.class, () -> Margins.all(Double.NaN));
    PaperChoice choice = PaperChoice.of(Paper.parse("A4"), PrintCorrection.NONE);
    assertThrows(Problem.class, () -> choice.withOverlap(0));
    assertThrows(Problem.class, () -> choice.withOverlap(Double.NaN));
    assertThrows(Problem.class, () -> choice.withOverlap(60));
  }
}
