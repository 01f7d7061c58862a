package org.bearingline.export.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;

class CurvesTest {

  @Property(tries = 300, seed = Seed.FIXED)
  void curvesStayOnTheCircle(
      @ForAll @DoubleRange(min = 0.1, max = 20000) double radius,
      @ForAll @DoubleRange(min = -360, max = 360) double sweep,
      @ForAll @DoubleRange(min = -180, max = 180) double start) {
    if (Math.abs(sweep) < 0.01) {
      return;
    }
    Arc arc = Arc.around(new Point(30, -7), radius, start, sweep);
    int n = Curves.count(arc);
    for (int i = 0; i < n; i++) {
      Point from = arc.pointAt((double) i / n);
      Point[] c = Curves.curve(arc, i, n);
      for (double t = 0; t <= 1; t += 0.05) {
        double off = Math.abs(bezier(from, c, t).distanceTo(arc.center()) - radius);
        assertTrue(off < 0.001, () -> off + " mm off the circle of radius " + radius);
      }
    }
  }

  @Test
  void aQuarterOfASmallCircleIsOneCurve() {
    assertTrue(Curves.count(Arc.around(Point.ORIGIN, 1, 0, 90)) == 1);
  }

  /** The Bernstein form of a cubic. */
  private static Point bezier(Point from, Point[] c, double t) {
    double s = 1 - t;
    return from.times(s * s * s)
        .plus(c[0].times(3 * s * s * t))
        .plus(c[1].times(3 * s * t * t))
        .plus(c[2].times(t * t * t));
  }
}
