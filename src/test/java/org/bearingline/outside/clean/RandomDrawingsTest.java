package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * Lines, arcs and Béziers of all sizes at random, their figures rounded as drawing programs write
 * them: the clean outline encloses what JTS says the flattened drawing does, and lies nowhere
 * farther from it than told.
 */
class RandomDrawingsTest {

  /** To a piece: fine enough that two that cross near a sharp corner are seen to. */
  private static final int CHORDS = 2000;

  /** mm: two edges this near to each other, a tenth of the tolerance, enclose nothing. */
  private static final double THREAD = 0.002;

  private static final Pattern LEFT_OUT =
      Pattern.compile(".*runs there and back and encloses nothing was left out, (\\S+) mm in.*");

  private static Point rounded(Point p, double step) {
    return new Point(Math.rint(p.x() / step) * step, Math.rint(p.y() / step) * step);
  }

  /** A star-shaped loop about the origin of very long and very short pieces. */
  private static List<StrokePiece> drawing(long seed) {
    Random random = new Random(seed);
    double step = List.of(1e-4, 1e-3, 0.00625).get(random.nextInt(3));
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < 5 + random.nextInt(12); i++) {
      double at = 360 * random.nextDouble();
      angles.add(at);
      if (random.nextInt(4) == 0) {
        angles.add(at + 0.02 * random.nextDouble());
      }
    }
    angles.sort(null);
    List<Point> corners = new ArrayList<>();
    for (double angle : angles) {
      Point p = rounded(Point.polar(60 + 20 * random.nextDouble(), angle), step);
      if (corners.isEmpty() || p.distanceTo(corners.get(corners.size() - 1)) > step) {
        corners.add(p);
      }
    }
    List<StrokePiece> pieces = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      Point chord = b.minus(a);
      double bend = 0.3 * (random.nextDouble() - 0.5);
      switch (random.nextInt(3)) {
        case 0 -> pieces.add(new StrokePiece.Plain(new Line(a, b)));
        case 1 -> pieces.add(new StrokePiece.Plain(Arc.ofBulge(a, b, bend + 1e-3)));
        default -> {
          Point p = rounded(a.plus(chord.times(0.3)).plus(chord.left().times(bend)), step);
          Point q = rounded(a.plus(chord.times(0.7)).plus(chord.left().times(-bend)), step);
          pieces.add(Sketches.bezier(a.x(), a.y(), p.x(), p.y(), q.x(), q.y(), b.x(), b.y()));
        }
      }
    }
    return pieces;
  }

  private static LinearRing flattened(List<StrokePiece> pieces) {
    List<Coordinate> corners = new ArrayList<>();
    for (StrokePiece piece : pieces) {
      for (int i = 0; i < CHORDS; i++) {
        double t = (double) i / CHORDS;
        Point p =
            piece instanceof StrokePiece.Plain plain
                ? plain.primitive().pointAt(t)
                : ((StrokePiece.Free) piece).curve().pointAt(t);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    corners.add(corners.get(0));
    return new GeometryFactory().createLinearRing(corners.toArray(new Coordinate[0]));
  }

  private static LinearRing flattened(Loop loop) {
    List<Coordinate> corners = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      int n = piece instanceof Line ? 20 : 400;
      for (int i = 0; i < n; i++) {
        Point p = piece.pointAt((double) i / n);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    corners.add(corners.get(0));
    return new GeometryFactory().createLinearRing(corners.toArray(new Coordinate[0]));
  }

  /** The largest distance of corners of the one from the other, by JTS, leaving threads out. */
  private static double farthest(
      LinearRing from, LinearRing to, int every, Optional<IndexedFacetDistance> thick) {
    IndexedFacetDistance distance = new IndexedFacetDistance(to);
    double most = 0;
    for (int i = 0; i < from.getNumPoints(); i += every) {
      Geometry corner = from.getPointN(i);
      double off = distance.distance(corner);
      boolean thread = off > most && thick.isPresent() && thick.get().distance(corner) > THREAD;
      most = thread ? most : Math.max(most, off);
    }
    return most;
  }

  /** The drawing without what is thinner than twice a thread, whether wood or the air in a slit. */
  private static Geometry thick(LinearRing ring) {
    Geometry wood = ring.getFactory().createPolygon(ring);
    return wood.buffer(-THREAD).buffer(2 * THREAD).buffer(-THREAD);
  }

  /**
   * Where the drawing has a spike or a slit without width, that is left out and told. By how much
   * the line is shorter then is twice the length told.
   */
  private static Optional<IndexedFacetDistance> thick(LinearRing ring, Loop clean, String note) {
    Matcher told = LEFT_OUT.matcher(note);
    if (!told.matches()) {
      return Optional.empty();
    }
    double shorter = (ring.getLength() - clean.length()) / 2;
    assertEquals(shorter, Double.parseDouble(told.group(1)), 0.1, note);
    return Optional.of(new IndexedFacetDistance(thick(ring)));
  }

  /** A spike 7 mm long and less than a thousandth wide, two of 2 mm. */
  @ParameterizedTest
  @ValueSource(longs = {1001, 1368, 16825})
  void spikesWithoutWidthAreLeftOutAndTold(long seed) {
    theAreaIsThatOfTheFlattenedDrawing(seed);
    CleanedOutline cleaned =
        Cleaning.clean(Sketches.closed(drawing(seed)), CleaningSettings.usual());
    assertTrue(LEFT_OUT.matcher(String.join(" ", cleaned.report().notes())).matches());
  }

  /** The drawing is farthest from the clean line beside a corner, between two samples. */
  @Test
  void theMoveBesideCornersIsTold() {
    theAreaIsThatOfTheFlattenedDrawing(8761);
  }

  @Property(tries = 300, seed = Seed.FIXED)
  void theAreaIsThatOfTheFlattenedDrawing(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    List<StrokePiece> pieces = drawing(seed);
    LinearRing ring = flattened(pieces);
    if (!new IsSimpleOp(ring).isSimple()) {
      return;
    }
    CleanedOutline cleaned = Cleaning.clean(Sketches.closed(pieces), CleaningSettings.usual());
    assertEquals(List.of(), cleaned.report().faults(), "seed " + seed);
    Loop outer = cleaned.outlines().get(0).outer();
    LinearRing clean = flattened(outer);
    Optional<IndexedFacetDistance> thick =
        thick(ring, outer, String.join(" ", cleaned.report().notes()));
    double measured =
        Math.max(farthest(clean, ring, 1, Optional.empty()), farthest(ring, clean, 7, thick));
    // The drawing is sampled within a fiftieth of the tolerance; gaps are told apart from the move.
    double gap = cleaned.report().gaps().largest();
    assertTrue(measured < 0.021 + gap, "seed " + seed + " lies off by " + measured);
    assertTrue(measured < cleaned.report().largestMove() + 0.002 + gap, "seed " + seed);
    assertTrue(cleaned.report().largestMove() < 0.020001, "seed " + seed + " " + cleaned.report());
    assertTrue(cleaned.report().piecesAfter() <= 9 * pieces.size(), "seed " + seed);
    double area = cleaned.outlines().stream().mapToDouble(Outline::area).sum();
    double drawn = ring.getFactory().createPolygon(ring).getArea();
    assertEquals(drawn, area, 0.02 * ring.getLength(), "seed " + seed);
  }

  /** A straight that runs on into a drawn arc lies farthest from it between two samples. */
  @Test
  void theFarthestPlaceAlongAnArc() {
    theAreaIsThatOfTheFlattenedDrawing(161573);
  }
}
