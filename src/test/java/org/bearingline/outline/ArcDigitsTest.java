package org.bearingline.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Areas and inside tests of arcs where a plain formula loses its digits or its count. */
class ArcDigitsTest {

  /** A flat segment is a parabola's: two thirds of chord times height, height chord² / 8r. */
  @ParameterizedTest
  @ValueSource(doubles = {1e3, 1e5, 1e7, 1e9})
  void theSegmentOfAShortArcOfGreatRadius(double radius) {
    double chord = 0.5;
    double sweep = 2 * Math.asin(chord / 2 / radius);
    double area = 2.0 / 3 * chord * (chord * chord / (8 * radius));
    assertEquals(area, Arc.doubledSegment(radius, sweep) / 2, 1e-6 * area);
    assertEquals(-area, Arc.doubledSegment(radius, -sweep) / 2, 1e-6 * area);
  }

  /** Seams at every 30° put ends on the ray; a point is inside where x² + y² < r². */
  @Test
  void raysThroughTheEndsOfArcsCountOnce() {
    List<Primitive> arcs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      arcs.add(Arc.around(Point.ORIGIN, 10, 30 * i, 30));
    }
    Loop circle = new Loop(arcs);
    Loop back = circle.reversed();
    for (Primitive arc : circle.primitives()) {
      double y = arc.start().y();
      for (double x = -12.25; x < 13; x += 0.5) {
        Point p = new Point(x, y);
        boolean inside = x * x + y * y < 100;
        assertEquals(inside, circle.contains(p), () -> "at " + p);
        assertEquals(inside, back.contains(p), () -> "back at " + p);
      }
    }
  }
}
