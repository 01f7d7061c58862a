package org.bearingline.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairingTest {

  private static List<String> check(String bit, Follower follower) {
    return Pairing.check(new Cutter(Length.parse(bit)), follower);
  }

  private static Follower usualCollar(String outside) {
    return Kit.usual().known(new Follower.Collar(Length.parse(outside)));
  }

  // The hobbyist's table of the usual set: a 1/4 in bit does not pass the 5/16 in collar (inside
  // 1/4 in); Router Magic asks for 1/16 in all round, so inside at least d + 1/8 in.
  @ParameterizedTest
  @CsvSource({
    "1/8in, 5/16in, 0",
    "1/4in, 1/2in, 0",
    "1/4in, 3/8in, 1",
    "1/4in, 7/16in, 1",
    "3/8in, 5/8in, 0",
    "1/2in, 5/8in, 1",
    "1/2in, 3/4in, 0"
  })
  void collarsOfTheUsualSet(String bit, String outside, int cautions) {
    assertEquals(cautions, check(bit, usualCollar(outside)).size());
  }

  @Test
  void aBitThatDoesNotPassTheCollarIsRefused() {
    Problem problem = assertThrows(Problem.class, () -> check("1/4in", usualCollar("5/16in")));
    assertTrue(problem.getMessage().contains("does not pass"), problem.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"1/2in, 3/8in", "1/2in, 1/2in"})
  void aCollarNoWiderThanItsBitIsRefused(String bit, String outside) {
    Problem problem =
        assertThrows(Problem.class, () -> check(bit, new Follower.Collar(Length.parse(outside))));
    assertTrue(problem.getMessage().contains("no wider"), problem.getMessage());
  }

  @Test
  void anUnknownInsideIsACaution() {
    assertEquals(1, check("1/4in", new Follower.Collar(30)).size());
  }

  @Test
  void aBearingMayBeSmallerThanItsBit() {
    assertEquals(List.of(), check("1/2in", new Follower.Bearing(9.525)));
  }

  @Test
  void impossibleToolsAreRefused() {
    assertThrows(Problem.class, () -> new Cutter(0));
    assertThrows(Problem.class, () -> new Cutter(-12.7));
    assertThrows(Problem.class, () -> new Cutter(Double.NaN));
    assertThrows(Problem.class, () -> new Cutter(Double.POSITIVE_INFINITY));
    assertThrows(Problem.class, () -> new Follower.Bearing(0));
    assertThrows(Problem.class, () -> new Follower.Collar(10, OptionalDouble.of(10)));
  }
}
