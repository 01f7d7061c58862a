package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;

/**
 * Unions of discs in a row, discs with slots, and washers, by closed formulas. Two neighbours in a
 * row overlap, from deeply to a hair, and no others do: an outer disc is apart from the next but
 * one because the disc between reaches into both.
 */
final class DiscOutlines {

  /** A disc of the row: its radius and how far, in (0, 1), the next keeps from covering it. */
  private record Bead(double radius, double apart) {}

  private DiscOutlines() {}

  static Arbitrary<Region> row(double radius) {
    Arbitrary<Double> radii =
        Arbitraries.oneOf(
            Arbitraries.of(radius, 2 * radius), Arbitraries.doubles().between(10, 40));
    Arbitrary<Double> aparts =
        Arbitraries.oneOf(
            Arbitraries.just(1 - BoxOutlines.HAIR), Arbitraries.doubles().between(0.1, 0.95));
    return Combinators.combine(radii, aparts)
        .as(Bead::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(DiscOutlines::row);
  }

  private static Region row(List<Bead> beads) {
    int n = beads.size();
    double[] r = new double[n];
    for (int i = 0; i < n; i++) {
      r[i] = beads.get(i).radius;
    }
    // Every second disc links its neighbours and is smaller than both.
    for (int i = 1; i < n; i += 2) {
      double least = Math.min(r[i - 1], i + 1 < n ? r[i + 1] : r[i - 1]);
      r[i] = Math.min(r[i], 0.9 * least);
    }
    double[] x = new double[n];
    for (int i = 1; i < n; i++) {
      double big = i % 2 == 1 ? r[i - 1] : r[i];
      double small = i % 2 == 1 ? r[i] : r[i - 1];
      x[i] = x[i - 1] + big + beads.get(i - 1).apart * small;
    }
    return Region.of(Outline.of(outline(x, r)));
  }

  private static Loop outline(double[] x, double[] r) {
    int n = x.length;
    if (n == 1) {
      return Loop.of(Arc.circle(new Point(x[0], 0), r[0]));
    }
    List<Point> lows = new ArrayList<>();
    for (int i = 1; i < n; i++) {
      double s = x[i] - x[i - 1];
      double along = (s * s + r[i - 1] * r[i - 1] - r[i] * r[i]) / (2 * s);
      double half = Math.sqrt(r[i - 1] * r[i - 1] - along * along);
      lows.add(new Point(x[i - 1] + along, -half));
    }
    // Along the bottom to the right end, then back along the top.
    List<Primitive> pieces = new ArrayList<>();
    for (int i = 1; i < n - 1; i++) {
      pieces.add(Arc.between(lows.get(i - 1), lows.get(i), new Point(x[i], 0), true));
    }
    Point last = lows.get(n - 2);
    pieces.add(Arc.between(last, flipped(last), new Point(x[n - 1], 0), true));
    for (int i = n - 2; i > 0; i--) {
      Point from = flipped(lows.get(i));
      pieces.add(Arc.between(from, flipped(lows.get(i - 1)), new Point(x[i], 0), true));
    }
    Point first = lows.get(0);
    pieces.add(Arc.between(flipped(first), first, new Point(x[0], 0), true));
    return new Loop(pieces);
  }

  private static Point flipped(Point p) {
    return new Point(p.x(), -p.y());
  }

  /** A disc with a slot run through its middle, as a finger pull has. */
  static Arbitrary<Region> crossed(double radius) {
    Arbitrary<Double> halves =
        Arbitraries.oneOf(Arbitraries.just(radius), Arbitraries.doubles().between(1, 12));
    Arbitrary<Double> discs = Arbitraries.doubles().between(15, 40);
    Arbitrary<Double> reaches = Arbitraries.doubles().between(42, 90);
    return Combinators.combine(discs, halves, reaches)
        .as((disc, half, reach) -> Region.of(Outline.of(crossed(disc, half, reach))));
  }

  /** The disc of radius {@code disc} united with the slot of half width {@code half}. */
  static Loop crossed(double disc, double half, double reach) {
    double x = Math.sqrt(disc * disc - half * half);
    return Trace.from(x, -half)
        .to(reach, -half)
        .round(reach, 0, reach, half, true)
        .to(x, half)
        .round(0, 0, -x, half, true)
        .to(-reach, half)
        .round(-reach, 0, -reach, -half, true)
        .to(-x, -half)
        .round(0, 0, x, -half, true)
        .closed();
  }

  /** Washers, the hole in the middle or off it, the wall down to a hair or exactly two radii. */
  static Arbitrary<Region> washer(double radius) {
    Arbitrary<Double> holes =
        Arbitraries.oneOf(
            Arbitraries.of(radius, radius + BoxOutlines.HAIR, radius - BoxOutlines.HAIR),
            Arbitraries.doubles().between(2, 30));
    Arbitrary<Double> walls =
        Arbitraries.oneOf(
            Arbitraries.of(BoxOutlines.HAIR, 2 * radius, 2 * radius + BoxOutlines.HAIR),
            Arbitraries.doubles().between(0.5, 30));
    Arbitrary<Double> shifts =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(0, 20));
    return Combinators.combine(holes, walls, shifts)
        .as(
            (hole, wall, shift) ->
                Region.of(
                    Outline.of(
                        Loop.of(Arc.circle(Point.ORIGIN, hole + wall + shift)),
                        Loop.of(Arc.circle(new Point(shift, 0), hole)))));
  }

  /** The same region moved by a similarity that turns and shifts. */
  static Region moved(Region region, double degrees, double dx, double dy) {
    return region.transformed(
        Similarity.rotation(degrees, Point.ORIGIN).then(Similarity.translation(dx, dy)));
  }
}
