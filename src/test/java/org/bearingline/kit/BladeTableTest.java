package org.bearingline.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.length.Length;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BladeTableTest {

  // A: "Band saw blade radius guide" (home-improvement article); B: wood band saw manual, Fig. 51
  // "Minimum radii for blade widths"; C: two other band saw manuals, Fig. 29 and the cutting-curves
  // page. The largest of the three stands here. The tables agree for 1/4, 1/2 and 3/4 in.
  @ParameterizedTest
  @CsvSource({
    "1/8in, 3/16in",
    "3/16in, 3/8in",
    "1/4in, 5/8in",
    "3/8in, 1-1/2in",
    "1/2in, 2-1/2in",
    "5/8in, 4in",
    "3/4in, 5-1/2in",
    "1in, 7-5/8in",
    "1-1/4in, 9-7/8in"
  })
  void aWidthOfTheTablesTurnsTheLargestOfTheirRadii(String width, String radius) {
    assertEquals(
        Length.parse(radius), SawBlade.ofWidth(Length.parse(width)).smallestRadius(), 1e-9);
  }

  // Metric charts, from memory: 6 mm turns 16, 10 mm turns 32 to 38, 13 mm turns 64 mm.
  @ParameterizedTest
  @CsvSource({"3, 5", "6, 16", "10, 38", "13, 64", "16, 100", "19, 140"})
  void metricWidthsHaveTheirOwnRows(double width, double radius) {
    assertEquals(radius, SawBlade.ofWidth(width).smallestRadius(), 1e-9);
  }

  @Test
  void betweenTwoRowsTheRadiusRunsStraight() {
    double low = 7.0;
    // Between 1/4 in (15.875 mm; 16 from the 6 mm row below it) and 3/8 in (38.1 mm).
    double expected = 16 + (38.1 - 16) * (low - 6.35) / (9.525 - 6.35);
    assertEquals(expected, SawBlade.ofWidth(low).smallestRadius(), 1e-9);
  }

  @Test
  void aWiderBladeBetweenRowsNeverTurnsTighter() {
    double before = 0;
    for (double width = 3.3; width < 31; width += 0.37) {
      double radius = SawBlade.ofWidth(width).smallestRadius();
      assertTrue(radius >= before, "at " + width);
      before = radius;
    }
  }

  @Test
  void aVeryNarrowBladeKeepsTheNarrowestRow() {
    assertEquals(5, SawBlade.ofWidth(1).smallestRadius(), 1e-9);
  }

  @Test
  void aBladeWiderThanTheTableIsRefusedInWords() {
    Problem problem = assertThrows(Problem.class, () -> SawBlade.ofWidth(40));
    assertTrue(problem.getMessage().contains("1-1/4"), problem.getMessage());
    assertFalse(problem.getMessage().contains("Exception"));
  }

  @Test
  void aBladeWithoutWidthIsRefused() {
    assertThrows(Problem.class, () -> SawBlade.ofWidth(0));
    assertThrows(Problem.class, () -> SawBlade.ofWidth(Double.NaN));
  }
}
