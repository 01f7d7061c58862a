package org.bearingline.routing.grain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.bearingline.Seed;
import org.bearingline.oracle.Case;
import org.bearingline.oracle.OutlineArbitraries;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.routing.Station;

/** Laws of the reading on random outlines, and the rule itself worked point by point. */
@Domain(OutlineArbitraries.class)
@Domain(DomainContext.Global.class)
class GrainLawsTest {

  private static final Approach HAND = Approach.usual();

  private static List<GrainEdge> edges(Region region) {
    List<GrainEdge> edges = new ArrayList<>();
    for (Loop loop : region.loops()) {
      edges.add(new GrainEdge("edge " + edges.size(), Contour.routed(loop)));
    }
    return edges;
  }

  private static GrainReading read(Region region, double fibres, Approach approach) {
    return GrainReading.of(edges(region), GrainSettings.usual().withFibres(fibres), approach);
  }

  private static double length(Region region) {
    return region.loops().stream().mapToDouble(Loop::length).sum();
  }

  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void allOfTheEdgeIsReadOnce(
      @ForAll Case given, @ForAll @DoubleRange(min = -180, max = 180) double fibres) {
    GrainReading reading = read(given.region(), fibres, HAND);
    double length = length(given.region());
    assertEquals(length, reading.shares().total(), 1e-9 * length);
    double sum = 0;
    for (GrainClass grain : GrainClass.values()) {
      sum += reading.shares().share(grain);
    }
    assertEquals(1, sum, 1e-12);
  }

  /** t from two points, n by asking on which side the wood is, g·n from both: no angles. */
  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void theRuleHoldsPointByPoint(
      @ForAll Case given, @ForAll @DoubleRange(min = -180, max = 180) double fibres) {
    Point along = new Point(Math.cos(Math.toRadians(fibres)), Math.sin(Math.toRadians(fibres)));
    for (Approach approach : List.of(HAND, HAND.turnedOver())) {
      for (GrainStretch stretch : read(given.region(), fibres, approach).stretches()) {
        for (Primitive piece : stretch.path().primitives()) {
          if (piece.length() > 0.01) {
            check(given.region(), along, stretch.grain(), piece, approach);
          }
        }
      }
    }
  }

  private static void check(
      Region wood, Point fibres, GrainClass grain, Primitive piece, Approach approach) {
    Point p = piece.pointAt(0.4);
    Point t = piece.pointAt(0.4001).minus(piece.pointAt(0.3999)).unit();
    Point left = p.plus(t.left().times(1e-4));
    Point right = p.minus(t.left().times(1e-4));
    if (wood.contains(left) == wood.contains(right)) {
      return; // Too near to another edge to tell the side.
    }
    assertEquals(wood.contains(left), approach == HAND, "side of the wood");
    Point n = wood.contains(left) ? t.left().times(-1) : t.left();
    Point g = fibres.dot(t) > 0 ? fibres : fibres.times(-1);
    double out = g.dot(n);
    double slack = 1e-4;
    double sin5 = Math.sin(Math.toRadians(5));
    double sin75 = Math.sin(Math.toRadians(75));
    boolean agrees =
        switch (grain) {
          case ALONG -> Math.abs(out) <= sin5 + slack;
          case CLEAN -> out >= sin5 - slack && out <= sin75 + slack;
          case TEARS -> out <= -sin5 + slack && out >= -sin75 - slack;
          case END_GRAIN -> Math.abs(out) >= sin75 - slack;
        };
    assertTrue(agrees, grain + " at " + p + " where g·n is " + out);
  }

  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void turningTheWorkOverExchangesCleanAndTears(
      @ForAll Case given, @ForAll @DoubleRange(min = -180, max = 180) double fibres) {
    GrainShares up = read(given.region(), fibres, HAND).shares();
    GrainShares over = read(given.region(), fibres, HAND.turnedOver()).shares();
    assertExchanged(up, over, length(given.region()));
  }

  @Property(tries = 200, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void mirroringThePartExchangesCleanAndTearsFromTheSameSide(
      @ForAll Case given, @ForAll @DoubleRange(min = -180, max = 180) double fibres) {
    Point axis = Point.polar(1, fibres);
    Region mirrored = given.region().transformed(Similarity.mirror(Point.ORIGIN, axis));
    GrainShares as = read(given.region(), fibres, HAND).shares();
    GrainShares mirror = read(mirrored, fibres, HAND).shares();
    assertExchanged(as, mirror, length(given.region()));
    GrainShares table = read(mirrored, fibres, new Approach(Station.TABLE, HAND.up())).shares();
    for (GrainClass grain : GrainClass.values()) {
      assertEquals(
          as.length(grain), table.length(grain), 1e-6 * length(given.region()), "twice mirrored");
    }
  }

  private static void assertExchanged(GrainShares one, GrainShares other, double length) {
    for (GrainClass grain : GrainClass.values()) {
      assertEquals(one.length(grain), other.length(grain.reversed()), 1e-6 * length, grain.words());
    }
  }
}
