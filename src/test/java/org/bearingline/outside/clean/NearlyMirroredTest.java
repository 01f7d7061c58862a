package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;

class NearlyMirroredTest {

  private static OptionalDouble by(double off, CenterLine line) {
    Loop hole = Loop.of(Arc.circle(new Point(50 + off, 30), 5));
    return NearlyMirrored.by(
        List.of(Outline.of(Loop.rectangle(new Bounds(0, 0, 100, 60)), hole)), line, 0.1);
  }

  /** The image of a hole that lies off the middle lies off the hole by twice as much. */
  @Test
  void aHoleOffTheMiddle() {
    assertEquals(0, by(0, CenterLine.VERTICAL).orElseThrow(), 1e-12);
    assertEquals(0.04, by(0.02, CenterLine.VERTICAL).orElseThrow(), 1e-9);
    assertEquals(0.0998, by(-0.0499, CenterLine.VERTICAL).orElseThrow(), 1e-9);
    assertTrue(by(0.0501, CenterLine.VERTICAL).isEmpty());
    assertEquals(0, by(7, CenterLine.HORIZONTAL).orElseThrow(), 1e-12);
  }
}
