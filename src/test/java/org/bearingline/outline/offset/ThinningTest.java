package org.bearingline.outline.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.junit.jupiter.api.Test;

class ThinningTest {

  /** A ring of radius 100 whose corners lie 1 µm outside and inside by turns. */
  private static Region zigzag(int corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      points.add(Point.polar(100 + (i % 2 == 0 ? 0.001 : -0.001), 360.0 * i / corners));
    }
    return Region.of(Outline.of(Loop.polygon(points)));
  }

  @Test
  void thinningKeepsToItsToleranceAndSaysHowFarItWent() {
    Region fine = zigzag(20_000);
    Thinning.Thinned thinned = Thinning.thin(fine, 0.004);
    assertTrue(thinned.region().size() < 2_000);
    assertTrue(thinned.largestMove() > 0 && thinned.largestMove() <= 0.004);
    for (int i = 0; i < 20_000; i += 371) {
      Point corner = fine.loops().get(0).primitives().get(i).start();
      assertTrue(thinned.region().distanceTo(corner) <= thinned.largestMove() + 1e-12);
    }
  }

  @Test
  void noiseOfAZigzagIsItsHeight() {
    assertEquals(0.002, Thinning.noise(zigzag(20_000)), 1e-5);
  }

  @Test
  void aPlainRectangleStays() {
    Region board = Region.of(Outline.of(Loop.rectangle(new Bounds(0, 0, 100, 60))));
    assertEquals(board, Thinning.thin(board, 0.01).region());
    assertEquals(0, Thinning.thin(board, 0.01).largestMove());
  }
}
