package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/** Random outlines of lines and arcs with the radius to work them with. */
public final class OutlineArbitraries extends DomainContextBase {

  /** mm of the tiny pieces set into an outline. */
  private static final double TINY = 1e-6;

  private enum Crumb {
    NONE,
    NONE_EITHER,
    SPLIT,
    CHAMFER
  }

  @Provide
  Arbitrary<Case> cases() {
    return Arbitraries.of(1.0, 3.0, 6.35, 9.525, 12.7).flatMap(OutlineArbitraries::ofRadius);
  }

  private static Arbitrary<Case> ofRadius(double radius) {
    Arbitrary<Case> plain =
        Arbitraries.oneOf(
            StarOutlines.any().map(region -> new Case("star", region, radius)),
            BoxOutlines.any(radius).map(region -> new Case("board", region, radius)),
            BoxOutlines.any(radius).map(region -> new Case("board", region, radius)),
            DiscOutlines.row(radius).map(region -> new Case("discs", region, radius)),
            DiscOutlines.crossed(radius).map(region -> new Case("crossed disc", region, radius)),
            DiscOutlines.washer(radius).map(region -> new Case("washer", region, radius)),
            GroupOutlines.pair(BoxOutlines.any(radius), radius)
                .map(region -> new Case("boards", region, radius)),
            GroupOutlines.pair(DiscOutlines.row(radius), radius)
                .map(region -> new Case("rows", region, radius)),
            GroupOutlines.island(radius).map(region -> new Case("island", region, radius)));
    Arbitrary<Double> turns =
        Arbitraries.oneOf(Arbitraries.of(0.0, 90.0), Arbitraries.doubles().between(0, 360));
    Arbitrary<Double> shifts =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(-500, 500));
    Arbitrary<Crumb> crumbs = Arbitraries.of(Crumb.class);
    Arbitrary<Integer> numbers = Arbitraries.integers().between(0, 40);
    return Combinators.combine(plain, turns, shifts, crumbs, numbers)
        .as(
            (given, turn, shift, crumb, number) -> {
              Region moved = DiscOutlines.moved(given.region(), turn, shift, -shift / 3);
              return given.with(crumbled(moved, crumb, number));
            });
  }

  private static Region crumbled(Region region, Crumb crumb, int number) {
    Outline outline = region.pieces().get(0);
    List<Primitive> pieces = outline.outer().primitives();
    int i = number % pieces.size();
    return switch (crumb) {
      case NONE, NONE_EITHER -> region;
      case SPLIT -> withFirst(region, new Loop(split(pieces, i)));
      case CHAMFER -> withFirst(region, new Loop(chamfered(pieces, i)));
    };
  }

  private static Region withFirst(Region region, Loop outer) {
    List<Outline> pieces = new ArrayList<>(region.pieces());
    pieces.set(0, new Outline(outer, pieces.get(0).openings()));
    return new Region(pieces);
  }

  // A tiny piece of the same line or arc in the middle of piece i.
  private static List<Primitive> split(List<Primitive> pieces, int i) {
    Primitive whole = pieces.get(i);
    if (whole.length() < 1e3 * TINY) {
      return pieces;
    }
    double share = 0.5 + TINY / whole.length();
    List<Primitive> result = new ArrayList<>(pieces);
    result.set(i, whole.part(0, 0.5));
    result.add(i + 1, whole.part(0.5, share));
    result.add(i + 2, whole.part(share, 1));
    return result;
  }

  // The corner at the end of piece i cut off by a tiny line.
  private static List<Primitive> chamfered(List<Primitive> pieces, int i) {
    int next = (i + 1) % pieces.size();
    Primitive before = pieces.get(i);
    Primitive after = pieces.get(next);
    if (next == i || before.length() < 1e3 * TINY || after.length() < 1e3 * TINY) {
      return pieces;
    }
    List<Primitive> result = new ArrayList<>(pieces);
    Primitive shorter = before.part(0, 1 - TINY / before.length());
    result.set(i, shorter);
    Primitive later = after.part(TINY / after.length(), 1);
    result.set(next, later);
    Point from = shorter.end();
    Point to = later.start();
    result.add(i + 1, new Line(from, to));
    return result;
  }
}
