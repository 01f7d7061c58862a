package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.bearingline.Seed;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.topology.OutlineCheck;

/** Laws of mathematical morphology that hold for every region and every disc. */
@Domain(OutlineArbitraries.class)
@Domain(DomainContext.Global.class)
class MorphologyLawsTest {

  private static final double SAME = 1e-6;

  /**
   * mm by which a radius may be off without a maker's noticing: what just fits may go either way.
   */
  private static final double HAIR = 1e-6;

  private static void assertSame(Region a, Region b) {
    assertSame(a, b, 1);
  }

  /** Of several steps each may be off by as much as one. */
  private static void assertSame(Region a, Region b, int steps) {
    Deviation apart = RegionMatch.between(a, b);
    assertTrue(apart.worst() <= steps * SAME, () -> "apart by " + apart);
  }

  private static void assertCovered(Region inner, Region outer) {
    Deviation outside = RegionMatch.outside(inner, outer);
    assertTrue(outside.worst() <= SAME, () -> "outside by " + outside);
  }

  /**
   * Whether a region is the closing. A disc that fits a hole or a slot by less than HAIR, or just
   * does not, decides over all of it; so a result that is not the same must lie between the
   * closings by a radius HAIR less and HAIR more.
   */
  private static void assertIsClosing(Region candidate, Case given, Region closed) {
    if (RegionMatch.between(candidate, closed).worst() > SAME) {
      assertCovered(close(given.region(), given.radius() - HAIR), candidate);
      assertCovered(candidate, close(given.region(), given.radius() + HAIR));
    }
  }

  private static void assertIsOpening(Region candidate, Case given, Region opened) {
    if (RegionMatch.between(candidate, opened).worst() > SAME) {
      assertCovered(open(given.region(), given.radius() + HAIR), candidate);
      assertCovered(candidate, open(given.region(), given.radius() - HAIR));
    }
  }

  private static Region close(Region region, double radius) {
    return Morphology.close(region, radius).region();
  }

  private static Region open(Region region, double radius) {
    return Morphology.open(region, radius).region();
  }

  private static Region dilate(Region region, double radius) {
    return Morphology.dilate(region, radius).region();
  }

  private static Region erode(Region region, double radius) {
    return Morphology.erode(region, radius).region();
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void closingCoversItsInputAndOpeningIsCovered(@ForAll Case given) {
    Region closed = close(given.region(), given.radius());
    Region opened = open(given.region(), given.radius());
    assertCovered(given.region(), closed);
    assertCovered(opened, given.region());
    assertTrue(closed.area() >= given.region().area() - SAME);
    assertTrue(opened.area() <= given.region().area() + SAME);
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void closingTwiceIsClosingOnce(@ForAll Case given) {
    Region once = close(given.region(), given.radius());
    assertIsClosing(close(once, given.radius()), given, once);
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void openingTwiceIsOpeningOnce(@ForAll Case given) {
    Region once = open(given.region(), given.radius());
    assertIsOpening(open(once, given.radius()), given, once);
  }

  /** A larger disc is a union of smaller ones, so it cannot enter more. */
  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void closingGrowsWithTheRadius(
      @ForAll Case given, @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
    Region small = close(given.region(), given.radius() * share);
    Region large = close(given.region(), given.radius());
    assertCovered(small, large);
  }

  /** Opening a board is closing what is left of a wide panel round it. */
  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void openingIsTheClosingOfTheComplement(@ForAll Case given) {
    Assume.that(given.region().pieces().size() == 1);
    Outline board = given.region().pieces().get(0);
    Loop frame = Loop.rectangle(board.bounds().grown(4 * given.radius() + 10));
    List<Outline> rest = new ArrayList<>();
    rest.add(Outline.of(frame, board.outer()));
    board.openings().forEach(opening -> rest.add(Outline.of(opening)));
    Region closedRest = close(new Region(rest), given.radius());
    Region opened = open(given.region(), given.radius());
    double whole = Outline.of(frame).area();
    double rounding = 1e-9 * whole;
    double rested = whole - closedRest.area();
    double least = open(given.region(), given.radius() + HAIR).area() - rounding;
    double most = open(given.region(), given.radius() - HAIR).area() + rounding;
    assertTrue(rested >= least && rested <= most, () -> rested + " not in " + least + ", " + most);
    if (Math.abs(rested - opened.area()) > rounding) {
      return;
    }
    // Every edge of the opening is an edge of the closed rest.
    Edges edges = Edges.of(closedRest);
    for (Loop loop : opened.loops()) {
      for (Primitive p : loop.primitives()) {
        Point middle = p.middle();
        assertTrue(edges.distance(middle.x(), middle.y()) <= SAME, () -> "no edge at " + middle);
      }
    }
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void dilatingInTwoStepsIsDilatingOnce(
      @ForAll Case given, @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
    double first = given.radius() * share;
    double second = given.radius() - first;
    Region between = dilate(given.region(), first);
    if (isApart(between)) {
      assertSame(dilate(given.region(), given.radius()), dilate(between, second), 2);
    }
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void erodingInTwoStepsIsErodingOnce(
      @ForAll Case given, @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
    double first = given.radius() * share;
    double second = given.radius() - first;
    Region between = erode(given.region(), first);
    if (isApart(between)) {
      assertSame(erode(given.region(), given.radius()), erode(between, second), 2);
    }
  }

  /** Edges that touch each other, as of a wall twice as thick as was taken off, are no outline. */
  private static boolean isApart(Region region) {
    return OutlineCheck.crossings(region.loops()).isEmpty();
  }

  private static Similarity inverse(Similarity map) {
    double n = map.a() * map.a() + map.b() * map.b();
    double b = map.mirrored() ? map.b() : -map.b();
    Similarity turn = new Similarity(map.a() / n, b / n, 0, 0, map.mirrored());
    Point origin = turn.apply(new Point(map.tx(), map.ty()));
    return turn.then(Similarity.translation(-origin.x(), -origin.y()));
  }

  private static void assertMovesAlong(Case given, Similarity map) {
    Region moved = given.region().transformed(map);
    double r = given.radius();
    double scaled = r * map.factor();
    assertSame(dilate(given.region(), r).transformed(map), dilate(moved, scaled));
    assertSame(erode(given.region(), r).transformed(map), erode(moved, scaled));
    Region back = close(moved, scaled).transformed(inverse(map));
    assertIsClosing(back, given, close(given.region(), r));
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void turningAndMovingChangeNothing(
      @ForAll Case given, @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    assertMovesAlong(
        given,
        Similarity.rotation(degrees, Point.ORIGIN).then(Similarity.translation(123.4, -567.8)));
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void mirroringChangesNothing(@ForAll Case given) {
    assertMovesAlong(given, Similarity.mirror(new Point(3, 4), new Point(10, 9)));
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void scalingByAHundredChangesNothing(@ForAll Case given) {
    assertMovesAlong(given, Similarity.scaling(100));
    assertMovesAlong(given, Similarity.scaling(0.01));
  }

  @Property(tries = 100, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void theStartPointChangesNothing(
      @ForAll Case given, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Region turned =
        new Region(
            given.region().pieces().stream()
                .map(
                    piece ->
                        new Outline(
                            restarted(piece.outer(), share),
                            piece.openings().stream().map(o -> restarted(o, share)).toList()))
                .toList());
    double r = given.radius();
    assertSame(dilate(given.region(), r), dilate(turned, r));
    assertSame(erode(given.region(), r), erode(turned, r));
    assertIsClosing(close(turned, r), given, close(given.region(), r));
  }

  private static Loop restarted(Loop loop, double share) {
    List<Primitive> pieces = new ArrayList<>(loop.primitives());
    Collections.rotate(pieces, (int) (share * pieces.size()));
    return new Loop(pieces);
  }
}
