package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.kit.Cutter;
import org.bearingline.length.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassesTest {

  // "Depth of cut" of two router instruction manuals: 1/8 in at most, any bit, any wood; common
  // practice: half the bit's diameter.
  @ParameterizedTest
  @CsvSource({
    "19.05, 12.7, 6",
    "3.175, 12.7, 1",
    "3.2, 12.7, 2",
    "6.35, 3.175, 4",
    "22, 6.35, 7",
    "0.5, 12.7, 1"
  })
  void passesAreEqualAndNoDeeperThanTheRule(double thickness, double diameter, int count) {
    Passes passes = Passes.through(thickness, new Cutter(diameter), Units.MM);
    assertEquals(count, passes.depths().size());
    assertEquals(thickness, passes.depths().get(count - 1));
    double before = 0;
    for (double depth : passes.depths()) {
      assertEquals(passes.perPass(), depth - before, 1e-9);
      assertTrue(depth - before <= Math.min(3.175, diameter / 2) + 1e-9);
      before = depth;
    }
  }

  @Test
  void theRuleNamesItsSource() {
    assertTrue(Passes.through(19, new Cutter(12.7), Units.MM).rule().contains("manuals"));
  }
}
