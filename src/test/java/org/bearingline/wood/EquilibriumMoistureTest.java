package org.bearingline.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against table 4-2 of the Wood Handbook, FPL-GTR-282 (2021), which prints one decimal. */
class EquilibriumMoistureTest {

  // The table itself was seen in a transcription; equation (4-5) misses it by 0.06 at most.
  @ParameterizedTest
  @CsvSource({
    "70, 5, 1.3",
    "70, 30, 6.2",
    "70, 50, 9.2",
    "70, 75, 14.4",
    "70, 85, 17.9",
    "70, 95, 23.9",
    "30, 75, 14.9",
    "30, 95, 24.3",
    "100, 50, 8.7",
    "100, 90, 19.5"
  })
  void table42InBothScales(double fahrenheit, double humidity, double percent) {
    assertEquals(percent, new Air(Temperature.fahrenheit(fahrenheit), humidity).moisture(), 0.065);
    double celsius = (fahrenheit - 32) / 1.8;
    assertEquals(percent, new Air(Temperature.celsius(celsius), humidity).moisture(), 0.065);
  }

  /** The reference point of timber trade: 20 °C and 65 % give 12 %. */
  @Test
  void theReferencePointOfTheTrade() {
    assertEquals(12.0, new Air(Temperature.celsius(20), 65).moisture(), 0.05);
  }

  // Rule of thumb of a wood-drying column in FDM magazine.
  @ParameterizedTest
  @CsvSource({"30, 6", "50, 9", "65, 12", "80, 16"})
  void ruleOfThumb(double humidity, double percent) {
    assertEquals(percent, new Air(Temperature.celsius(21), humidity).moisture(), 0.5);
  }

  /** The handbook gives both sets of coefficients; they are one curve. */
  @Property(tries = 200, seed = Seed.FIXED)
  void bothScalesAgree(
      @ForAll @DoubleRange(min = 30, max = 120) double fahrenheit,
      @ForAll @DoubleRange(min = 5, max = 95) double humidity) {
    double one = new Air(Temperature.fahrenheit(fahrenheit), humidity).moisture();
    double other = new Air(Temperature.celsius((fahrenheit - 32) / 1.8), humidity).moisture();
    assertEquals(one, other, 0.02);
  }

  @Property(tries = 200, seed = Seed.FIXED)
  void damperAirMakesDamperWood(
      @ForAll @DoubleRange(min = -1, max = 130) double celsius,
      @ForAll @DoubleRange(min = 5, max = 94) double humidity) {
    Temperature t = Temperature.celsius(celsius);
    assertTrue(new Air(t, humidity + 1).moisture() > new Air(t, humidity).moisture());
  }

  @ParameterizedTest
  @CsvSource({"20, 4.9", "20, 95.1", "-1.3, 50", "133, 50", "20, NaN"})
  void outsideTheTableIsRefused(double celsius, double humidity) {
    Air air = new Air(Temperature.celsius(celsius), humidity);
    assertThrows(Problem.class, air::moisture);
  }

  @ParameterizedTest
  @CsvSource({"29, 50", "271, 50"})
  void outsideTheTableIsRefusedInFahrenheit(double fahrenheit, double humidity) {
    Air air = new Air(Temperature.fahrenheit(fahrenheit), humidity);
    assertTrue(assertThrows(Problem.class, air::moisture).getMessage().contains("30 to 270 °F"));
  }

  @Test
  void drierThanDampestIsAsked() {
    Problem problem =
        assertThrows(Problem.class, () -> MoistureRange.indoors(Temperature.celsius(20), 60, 40));
    assertTrue(problem.getMessage().contains("lower figure first"), problem.getMessage());
  }
}
