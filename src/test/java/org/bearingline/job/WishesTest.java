package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.junit.jupiter.api.Test;

class WishesTest {

  private static Wishes wishes(
      Map<String, String> measures, List<Double> bits, OptionalDouble collar, String paper) {
    return new Wishes(
        measures,
        bits,
        OptionalDouble.empty(),
        collar,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.ofNullable(paper),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.of(Units.MM),
        DrawnWishes.NONE);
  }

  @Test
  void theNearerWishGoesFirstAndTheRestIsFilledIn() {
    Wishes own = wishes(Map.of("rise", "1in"), List.of(), OptionalDouble.empty(), "A3");
    Wishes general =
        wishes(Map.of("rise", "2in", "length", "30in"), List.of(9.5), OptionalDouble.of(16), "A4");
    Wishes merged = own.over(general);
    assertEquals(Map.of("rise", "1in", "length", "30in"), merged.measures());
    assertEquals(List.of(9.5), merged.bits());
    assertEquals(OptionalDouble.of(16), merged.collar());
    assertEquals(Optional.of("A3"), merged.paper());
  }

  @Test
  void aBitOfItsOwnDoesNotTakeTheFollowerMeantForAnother() {
    Wishes own = wishes(Map.of(), List.of(12.7), OptionalDouble.empty(), null);
    Wishes general = wishes(Map.of(), List.of(9.5), OptionalDouble.of(16), null);
    assertEquals(OptionalDouble.empty(), own.over(general).collar());
  }
}
