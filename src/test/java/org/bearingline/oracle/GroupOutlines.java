package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;

/**
 * Regions of two pieces: side by side, or one within an opening of the other. The gap is often
 * exactly twice the radius, or a hair.
 */
final class GroupOutlines {

  private GroupOutlines() {}

  private static Arbitrary<Double> gaps(double radius) {
    double hair = BoxOutlines.HAIR;
    return Arbitraries.oneOf(
        Arbitraries.of(2 * radius, 2 * radius + hair, 2 * radius - hair, hair),
        Arbitraries.doubles().between(0.1, 40));
  }

  static Arbitrary<Region> pair(Arbitrary<Region> singles, double radius) {
    return Combinators.combine(singles, singles, gaps(radius)).as(GroupOutlines::beside);
  }

  private static Region beside(Region left, Region right, double gap) {
    Bounds l = left.bounds();
    Bounds r = right.bounds();
    Region moved =
        right.transformed(
            Similarity.translation(l.maxX() - r.minX() + gap, l.center().y() - r.center().y()));
    List<Outline> pieces = new ArrayList<>(left.pieces());
    pieces.addAll(moved.pieces());
    return new Region(pieces);
  }

  /** A disc off the middle of a ring's hole. */
  static Arbitrary<Region> island(double radius) {
    Arbitrary<Double> discs = Arbitraries.doubles().between(2, 30);
    Arbitrary<Double> shifts =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(0, 30));
    return Combinators.combine(discs, gaps(radius), shifts)
        .as(
            (disc, gap, shift) ->
                Region.of(
                    Outline.of(
                        Loop.of(Arc.circle(Point.ORIGIN, disc + gap + shift + 20)),
                        Loop.of(Arc.circle(Point.ORIGIN, disc + gap + shift))),
                    Outline.of(Loop.of(Arc.circle(new Point(shift, 0), disc)))));
  }
}
