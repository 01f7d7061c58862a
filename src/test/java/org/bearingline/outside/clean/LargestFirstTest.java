package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;

/** The numbers of outlines do not hang on the order they were drawn in, nor on rounding. */
class LargestFirstTest {

  private static Outline box(double x, double y, double width, double height) {
    return Outline.of(
        Loop.polygon(
            List.of(
                new Point(x, y),
                new Point(x + width, y),
                new Point(x + width, y + height),
                new Point(x, y + height))));
  }

  @Test
  void largerFirstThenFromTheLeftThenFromBelow() {
    List<Outline> expected =
        List.of(
            box(500, 500, 51, 20),
            // One column and one area but for rounding, which would put them the other way round.
            box(0.00000001, 0, 50, 20.0000001),
            box(0, 100, 20, 50),
            box(-0.00000001, 200, 50, 19.9999999),
            box(40, -100, 50, 20),
            box(-300, 0, 49.99, 20));
    for (int seed = 0; seed < 50; seed++) {
      List<Outline> mixed = new ArrayList<>(expected);
      Collections.shuffle(mixed, new Random(seed));
      assertEquals(expected, LargestFirst.of(mixed));
    }
  }
}
