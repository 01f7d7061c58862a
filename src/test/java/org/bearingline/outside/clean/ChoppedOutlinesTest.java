package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Random outlines of tangent lines and arcs, cut into chords with noise, come back. */
class ChoppedOutlinesTest {

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
    check(loop, cleaned, 1e-3, 1e-5);
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
            Sketches.noisy(Sketches.traced(loop, points, 0.03, seed), 0.05),
            CleaningSettings.usual());
    check(loop, cleaned, 0.06, 0.06);
  }

  private static void check(Loop loop, CleanedOutline cleaned, double radius, double line) {
    assertEquals(List.of(), cleaned.report().faults());
    Loop back = cleaned.outlines().get(0).outer();
    assertEquals(loop.size(), back.size());
    for (Primitive piece : loop.primitives()) {
      for (int i = 0; i < 12; i++) {
        assertTrue(back.distanceTo(piece.pointAt(i / 12.0)) < line);
      }
      if (piece instanceof Arc arc) {
        // Over a sweep θ a rise off by δ moves the radius by some 8 δ / θ².
        double sweep = Math.toRadians(Math.min(90, Math.abs(arc.sweep())));
        double slack = radius * 8 / (sweep * sweep);
        double off =
            back.primitives().stream()
                .filter(p -> p instanceof Arc other && other.distanceTo(arc.middle()) < 1)
                .mapToDouble(p -> Math.abs(((Arc) p).radius() - arc.radius()))
                .min()
                .orElseThrow();
        assertTrue(off < slack, off + " mm off radius " + arc.radius());
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
