package org.bearingline.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Crests whose place and height closed formulas tell. */
class CrestTest {

  @Test
  void ofParabola() {
    Crest crest = Crest.highest(s -> 5 - (s - 0.377) * (s - 0.377), 10, 60);
    assertEquals(0.377, crest.share(), 1e-7);
    assertEquals(5, crest.height(), 1e-14);
  }

  @Test
  void ofSharpRoof() {
    Crest crest = Crest.highest(s -> -Math.abs(s - 0.123456), 16, 60);
    assertEquals(0.123456, crest.share(), 1e-12);
    assertEquals(0, crest.height(), 1e-12);
  }

  @Test
  void theHigherOfTwoThoughTheSamplesShowItLower() {
    // Roofs at 0.25, on a sample, and at 0.65, between two: 1.00 and 1.02.
    Crest crest =
        Crest.highest(s -> Math.max(1 - Math.abs(s - 0.25), 1.02 - Math.abs(s - 0.65)), 8, 60);
    assertEquals(0.65, crest.share(), 1e-12);
    assertEquals(1.02, crest.height(), 1e-12);
  }

  @Test
  void atAnEndItIsTheEnd() {
    assertEquals(new Crest(1, 3), Crest.highest(s -> 2 + s, 16, 60));
    assertEquals(new Crest(0, 3), Crest.highest(s -> 3 - s * s, 16, 60));
    assertEquals(new Crest(0, 7), Crest.highest(s -> 7, 16, 60));
  }
}
