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
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;

/**
 * Boards with notches, slots, lifts and tabs along two edges and openings along the middle. Valid
 * by construction: each feature keeps to its own stretch of 60 mm and stays 20 mm off the middle
 * line, and the openings within 18 mm of it. Widths of exactly twice the radius, and a hair more or
 * less, come often.
 */
final class BoxOutlines {

  private static final double CELL = 60;
  private static final double HALF_HEIGHT = 60;
  private static final double SIDE = 20;
  static final double HAIR = 1e-7;

  private enum Hole {
    NONE,
    DISC,
    SLOT,
    RECTANGLE
  }

  /** An opening, by kind and half its width. */
  private record Opening(Hole hole, double half) {}

  private BoxOutlines() {}

  static Arbitrary<Region> any(double radius) {
    Arbitrary<Double> widths =
        Arbitraries.oneOf(
            Arbitraries.of(2 * radius, 2 * radius + HAIR, 2 * radius - HAIR),
            Arbitraries.doubles().between(1, 36));
    Arbitrary<Double> depths =
        Arbitraries.oneOf(Arbitraries.just(radius), Arbitraries.doubles().between(1, 30));
    Arbitrary<List<Feature>> features =
        Combinators.combine(Arbitraries.of(Feature.Kind.class), widths, depths)
            .as(Feature::new)
            .list()
            .ofMaxSize(3);
    Arbitrary<Double> halves =
        Arbitraries.oneOf(
            Arbitraries.of(radius, radius + HAIR, radius - HAIR),
            Arbitraries.doubles().between(1, 17));
    Arbitrary<List<Opening>> openings =
        Combinators.combine(Arbitraries.of(Hole.class), halves)
            .as(Opening::new)
            .list()
            .ofMaxSize(3);
    Arbitrary<Double> corners = Arbitraries.of(0.0, radius, 3.0, 12.0);
    return Combinators.combine(features, features, openings, corners).as(BoxOutlines::box);
  }

  private static Region box(
      List<Feature> top, List<Feature> bottom, List<Opening> openings, double corner) {
    int cells = Math.max(1, Math.max(top.size(), Math.max(bottom.size(), openings.size())));
    double halfWidth = cells * CELL / 2 + SIDE;
    List<Primitive> pieces = new ArrayList<>(half(top, halfWidth, corner));
    for (Primitive piece : half(bottom, halfWidth, corner)) {
      pieces.add(piece.transformed(Similarity.rotation(180, Point.ORIGIN)));
    }
    List<Loop> holes = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      addHole(openings.get(i), -halfWidth + SIDE + (i + 0.5) * CELL, holes);
    }
    return Region.of(new Outline(new Loop(pieces), holes));
  }

  // From the middle of the right side over the top to the middle of the left side.
  private static List<Primitive> half(List<Feature> features, double halfWidth, double corner) {
    Trace trace = Trace.from(halfWidth, 0).to(halfWidth, HALF_HEIGHT - corner);
    if (corner > 0) {
      double cx = halfWidth - corner;
      trace.round(cx, HALF_HEIGHT - corner, cx, HALF_HEIGHT, true);
    }
    for (int i = 0; i < features.size(); i++) {
      features.get(i).draw(trace, halfWidth - SIDE - (i + 0.5) * CELL);
    }
    trace.to(-halfWidth + corner, HALF_HEIGHT);
    if (corner > 0) {
      double cx = -halfWidth + corner;
      trace.round(cx, HALF_HEIGHT - corner, -halfWidth, HALF_HEIGHT - corner, true);
    }
    return trace.to(-halfWidth, 0).pieces();
  }

  private static void addHole(Opening opening, double x, List<Loop> holes) {
    double r = opening.half;
    switch (opening.hole) {
      case NONE -> {}
      case DISC -> holes.add(Loop.of(Arc.circle(new Point(x, 0), r)));
      case SLOT -> holes.add(slot(x, r, 25));
      case RECTANGLE -> holes.add(Loop.rectangle(new Bounds(x - 25, -r, x + 25, r)));
    }
  }

  /** A slot along x with round ends, its ends' centres {@code 25 − r} mm either side of x. */
  private static Loop slot(double x, double r, double halfLength) {
    double reach = halfLength - r;
    return Trace.from(x - reach, -r)
        .to(x + reach, -r)
        .round(x + reach, 0, x + reach, r, true)
        .to(x - reach, r)
        .round(x - reach, 0, x - reach, -r, true)
        .closed();
  }
}
