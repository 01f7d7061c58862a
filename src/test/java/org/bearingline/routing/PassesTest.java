package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.length.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassesTest {

  // "Depth of cut" of two router instruction manuals: 1/8 in at most, any bit, any wood; common
  // practice: half the bit's diameter.
  // 19.05 mm in bites of at most 3.175 mm is six of just that: no round step lies between. 22 mm
  // would be seven of 3.143 mm, so it is one of 1 mm and seven of 3 mm.
  @ParameterizedTest
  @CsvSource({
    "19.05, 12.7, 6",
    "3.175, 12.7, 1",
    "3.2, 12.7, 2",
    "6.35, 3.175, 4",
    "22, 6.35, 8",
    "0.5, 12.7, 1"
  })
  void passesAreFewestAndNoDeeperThanTheRule(double thickness, double diameter, int count) {
    Passes passes = Passes.through(thickness, new Cutter(diameter), Units.MM);
    assertEquals(count, passes.depths().size());
    assertEquals(thickness, passes.depths().get(count - 1));
    double before = 0;
    for (double depth : passes.depths()) {
      if (before > 0) {
        assertEquals(passes.perPass(), depth - before, 1e-9);
      }
      assertTrue(depth - before <= Math.min(3.175, diameter / 2) + 1e-9);
      before = depth;
    }
  }

  @Test
  void theRuleNamesItsSource() {
    assertTrue(Passes.through(19, new Cutter(12.7), Units.MM).rule().contains("manuals"));
  }

  // Worked by hand: 20 mm in bites of at most 3.175 mm takes 7; 6 of 3 mm leave 2 mm for the first.
  // 13/16 in takes 7 bites of at most 1/8 in; 6 of 1/8 in leave 1/16 in.
  @Test
  void allButTheFirstTakeARoundStep() {
    assertEquals(
        List.of(2.0, 5.0, 8.0, 11.0, 14.0, 17.0, 20.0), Passes.inSteps(20, 3.175, Units.MM));
    List<Double> inch = Passes.inSteps(20.6375, 3.175, Units.INCH);
    assertEquals(7, inch.size());
    assertEquals(25.4 / 16, inch.get(0), 1e-9);
    assertEquals(25.4 * 3 / 16, inch.get(1), 1e-9);
  }
}
