package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;

/** The shapes that tests and benchmark share. */
public enum BenchmarkShapes {

  /** A rail 600 × 90 with two quirks, two lifts a side and round top corners: 20 pieces. */
  STEPPED_RAIL {
    @Override
    public Region region() {
      return Region.of(Outline.of(steppedRail()));
    }
  },

  /** A drawer front 400 × 150 with a finger hole crossed by a slot 12 mm wide: 8 + 8 pieces. */
  DRAWER_FRONT {
    @Override
    public Region region() {
      return Region.of(
          Outline.of(rounded(400, 150, 3), moved(DiscOutlines.crossed(30, 6, 54), 200, 75)));
    }
  },

  /** A ring of 200 tangent arcs, by turns 123.6° convex and 120° concave, radii 5 to 40. */
  RING {
    @Override
    public Region region() {
      return Region.of(Outline.of(ring()));
    }
  },

  /** A waving closed line of 10,000 points with noise of ±0.01 mm. */
  NOISY_10K {
    @Override
    public Region region() {
      return Region.of(Outline.of(noisy(10_000, 0.01)));
    }
  },

  /** The same line with 100,000 points and noise of ±0.001 mm. */
  NOISY_100K {
    @Override
    public Region region() {
      return Region.of(Outline.of(noisy(100_000, 0.001)));
    }
  };

  private static final long NOISE_SEED = 20261125;
  private static final int ARCS = 200;

  /** Arcs after which the ring's radii repeat; a whole number of turns closes it. */
  private static final int PERIOD = 40;

  public abstract Region region();

  private static Loop steppedRail() {
    Trace trace = Trace.from(0, 0).to(60, 0).by(0, 3);
    riseRight(trace, 12, 1);
    trace.by(70, 0);
    riseRight(trace, 12, 1);
    trace.to(600 - trace.x(), trace.y());
    riseRight(trace, 12, -1);
    trace.by(70, 0);
    riseRight(trace, 12, -1);
    return trace
        .to(540, 0)
        .to(600, 0)
        .to(600, 87)
        .round(597, 87, 597, 90, true)
        .to(3, 90)
        .round(3, 87, 0, 87, true)
        .closed();
  }

  // A lift to the right, up (1) or down (-1), by two tangent arcs of 60°.
  private static void riseRight(Trace trace, double r, int up) {
    double half = r * Math.sin(Math.PI / 3);
    double rise = up * r * (1 - Math.cos(Math.PI / 3));
    double x = trace.x();
    double y = trace.y();
    trace.round(x, y + up * r, x + half, y + rise, up > 0);
    trace.round(x + 2 * half, y + 2 * rise - up * r, x + 2 * half, y + 2 * rise, up < 0);
  }

  private static Loop rounded(double width, double height, double r) {
    return Trace.from(r, 0)
        .to(width - r, 0)
        .round(width - r, r, width, r, true)
        .to(width, height - r)
        .round(width - r, height - r, width - r, height, true)
        .to(r, height)
        .round(r, height - r, 0, height - r, true)
        .to(0, r)
        .round(r, r, r, 0, true)
        .closed();
  }

  private static Loop moved(Loop loop, double dx, double dy) {
    return loop.transformed(Similarity.translation(dx, dy));
  }

  private static Loop ring() {
    List<Primitive> arcs = new ArrayList<>(ARCS);
    Point at = Point.ORIGIN;
    double heading = 0;
    for (int i = 0; i < ARCS; i++) {
      double wave = (1 - Math.cos(2 * Math.PI * (i % PERIOD) / PERIOD)) / 2;
      double radius = 5 + 35 * Math.pow(wave, 3);
      double sweep = i % 2 == 0 ? 123.6 : -120;
      double toCenter = heading + (sweep > 0 ? 90 : -90);
      Point center = at.plus(Point.polar(radius, toCenter));
      heading += sweep;
      Point next =
          i == ARCS - 1
              ? Point.ORIGIN
              : center.plus(Point.polar(radius, heading + (sweep > 0 ? -90 : 90)));
      arcs.add(new Arc(center, radius, at, next, sweep));
      at = next;
    }
    return new Loop(arcs);
  }

  private static Loop noisy(int points, double noise) {
    Random random = new Random(NOISE_SEED);
    List<Point> corners = new ArrayList<>(points);
    for (int i = 0; i < points; i++) {
      double a = 2 * Math.PI * i / points;
      double wave =
          12 * Math.sin(3 * a + 0.4) + 4 * Math.sin(17 * a + 1.1) + 1.7 * Math.sin(120 * a + 2);
      double r = 200 + wave + noise * (2 * random.nextDouble() - 1);
      corners.add(new Point(r * Math.cos(a), r * Math.sin(a)));
    }
    return Loop.polygon(corners);
  }
}
