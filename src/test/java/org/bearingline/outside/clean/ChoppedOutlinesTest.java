package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Random outlines of tangent lines and arcs, cut into chords with noise, come back. */
class ChoppedOutlinesTest {

  /** mm that a point of a trace lies off at most, all over a disc. */
  private static final double NOISE = 0.03;

  /** Its standard deviation across the line: half the radius of the disc. */
  private static final double SPREAD = NOISE / 2;

  /** A polygon about the origin whose corners are rounded: sides and radii at random. */
  private static Loop rounded(int sides, long seed) {
    Random random = new Random(seed);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double at = 360.0 * (i + 0.3 * random.nextDouble()) / sides;
      corners.add(Point.polar(150 + 100 * random.nextDouble(), at));
    }
    List<Arc> arcs = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      Point here = corners.get(i);
      Point in = here.minus(corners.get((i + sides - 1) % sides));
      Point out = corners.get((i + 1) % sides).minus(here);
      double turn = Math.atan2(in.cross(out), in.dot(out));
      double room = 0.4 * Math.min(in.norm(), out.norm());
      double most = room / Math.tan(Math.abs(turn) / 2);
      double radius = Math.min(most, 8 + 50 * random.nextDouble());
      double cut = radius * Math.tan(Math.abs(turn) / 2);
      Point start = here.minus(in.unit().times(cut));
      Point end = here.plus(out.unit().times(cut));
      arcs.add(Arc.ofBulge(start, end, Math.tan(turn / 4)));
    }
    List<Primitive> pieces = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      pieces.add(arcs.get(i));
      pieces.add(new Line(arcs.get(i).end(), arcs.get((i + 1) % sides).start()));
    }
    return new Loop(pieces);
  }

  private static boolean isPlain(Loop loop) {
    for (Primitive piece : loop.primitives()) {
      // An arc that hardly rises over its chord, or a side of no length, tells nothing of itself.
      boolean shows = piece instanceof Arc arc ? Math.abs(arc.sweep()) > 15 : piece.length() > 10;
      if (!shows) {
        return false;
      }
    }
    return true;
  }

  @Property(tries = 150, seed = Seed.FIXED)
  void chordsGiveCountAndRadiiBack(
      @ForAll @IntRange(min = 3, max = 7) int sides,
      @ForAll @LongRange(min = 0, max = 100_000) long seed,
      @ForAll @IntRange(min = 5, max = 100) int tenthMicrons) {
    Loop loop = rounded(sides, seed);
    if (!isPlain(loop)) {
      return;
    }
    CleanedOutline cleaned =
        Cleaning.clean(
            Sketches.polygon(Sketches.chopped(loop, tenthMicrons * 1e-4)),
            CleaningSettings.usual());
    // Over a turn θ a rise off by δ moves the radius by some 8 δ / θ².
    check(loop, cleaned, arc -> 8e-3 / (wide(arc) * wide(arc)), 1e-5);
    assertTrue(cleaned.report().largestMove() < 0.02);
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void tracesGiveCountAndRadiiBack(
      @ForAll @IntRange(min = 3, max = 6) int sides,
      @ForAll @LongRange(min = 0, max = 100_000) long seed,
      @ForAll @IntRange(min = 3_000, max = 20_000) int points) {
    Loop loop = rounded(sides, seed);
    if (!isPlain(loop)) {
      return;
    }
    CleanedOutline cleaned =
        Cleaning.clean(
            Sketches.noisy(Sketches.traced(loop, points, NOISE, seed), 0.05),
            CleaningSettings.usual());
    double least = loop.primitives().stream().mapToDouble(Primitive::length).min().orElseThrow();
    double standard = SPREAD / Math.sqrt(points * least / loop.length());
    // A straight fitted to n points has the standard error 2 σ / √n at its ends.
    check(loop, cleaned, arc -> 8 * standardError(arc, loop, points), 8 * standard);
  }

  /** An arc of 18° between long straights, and arcs beside the seam of the trace. */
  @ParameterizedTest
  @CsvSource({"6, 19306, 15127", "6, 41689, 3880", "5, 90282, 11395", "4, 16701, 16305"})
  void shortArcsAndThoseAtTheSeamOfATraceComeBack(int sides, long seed, int points) {
    tracesGiveCountAndRadiiBack(sides, seed, points);
  }

  /**
   * Of the radius of an arc of n points between known tangents, mm. An arc of radius r that turns
   * by θ leaves the corner of its tangents by r (sec θ/2 − 1). By a radius that is off by δ, its
   * points lie off by about δ (sec θ/2 − 1) (1 − u²), u from −1 at its one end to 1 at the other,
   * whose squares have the mean 8/15 of the largest one.
   */
  private static double standardError(Arc arc, Loop loop, int points) {
    double rise = 1 / Math.cos(wide(arc) / 2) - 1;
    return SPREAD / Math.sqrt(8 * points * arc.length() / loop.length() / 15) / rise;
  }

  /** The turn in radians; of wider arcs a quarter turn tells the radius no worse. */
  private static double wide(Arc arc) {
    return Math.toRadians(Math.min(90, Math.abs(arc.sweep())));
  }

  private static void check(
      Loop loop, CleanedOutline cleaned, ToDoubleFunction<Arc> radius, double line) {
    assertEquals(List.of(), cleaned.report().faults());
    Loop back = cleaned.outlines().get(0).outer();
    assertEquals(loop.size(), back.size());
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 12; i++) {
        assertTrue(back.distanceTo(piece.pointAt(i / 12.0)) < line);
      }
      if (piece instanceof Arc arc) {
        double off =
            back.primitives().stream()
                .filter(p -> p instanceof Arc other && other.distanceTo(arc.middle()) < 1)
                .mapToDouble(p -> Math.abs(((Arc) p).radius() - arc.radius()))
                .min()
                .orElseThrow();
        assertTrue(off < radius.applyAsDouble(arc), off + " mm off radius " + arc.radius());
      }
    }
    assertValid(back);
  }

  // By the validity check of JTS, of the loop flattened.
  private static void assertValid(Loop loop) {
    List<Coordinate> corners = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 16; i++) {
        Point p = piece.pointAt(i / 16.0);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    corners.add(corners.get(0));
    assertTrue(
        new IsValidOp(new GeometryFactory().createPolygon(corners.toArray(new Coordinate[0])))
            .isValid());
  }
}
