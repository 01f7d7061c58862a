package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Crest;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * ((P ⊕ D(R)) ⊖ D(r)) \ (P ⊖ D(r − R)): where the bearing bridges a hollow and the floor does not
 * come down to its depth. In a sharp hollow of waste angle θ the floor loses R (1/sin(θ/2) − 1).
 */
final class GrooveShallows {

  /** A place that loses less than this, in mm, is rounding. */
  private static final double CRUMB_DEPTH = 1e-5;

  /** A piece smaller than this, in mm², likewise. */
  private static final double CRUMB_AREA = 1e-6;

  /** A piece's edge this near to the floor, in mm, is the floor. */
  private static final double ALONG = 1e-5;

  private static final int SAMPLES = 16;

  private static final int STEPS = 60;

  private final GrooveFloor floor;
  private final double depth;
  private final Units units;
  private final RoutedEdge edge;
  private final NearestEdge floorEdge;

  private GrooveShallows(GrooveFloor floor, double depth, Units units) {
    this.units = units;
    this.floor = floor;
    this.depth = depth;
    this.edge = floor.edge();
    this.floorEdge = NearestEdge.of(floor.region().loops());
  }

  /** The places, not yet numbered. */
  static List<Groove.Shallow> of(GrooveFloor floor, double depth, Units units) {
    return new GrooveShallows(floor, depth, units).places();
  }

  private List<Groove.Shallow> places() {
    Region wanted = floor.wanted(depth);
    if (wanted.isEmpty()) {
      return List.of();
    }
    Region lost =
        edge.isOutside()
            ? Overlay.difference(floor.region(), wanted)
            : Overlay.difference(wanted, floor.region());
    NearestEdge wantedEdge = NearestEdge.of(wanted.loops());
    List<Groove.Shallow> places = new ArrayList<>();
    for (Outline piece : withoutAir(lost).pieces()) {
      PieceMeasure measure = PieceMeasure.of(piece, wantedEdge, floorEdge);
      if (piece.area() <= CRUMB_AREA || measure.depth() <= CRUMB_DEPTH) {
        continue;
      }
      double inside = Math.max(0, measure.insideRadius() - depth);
      Nearest nearest = nearest(piece);
      if (bitesNothing(piece)) {
        throw notFollowed(nearest.edge(), inside);
      }
      places.add(
          new Groove.Shallow(
              0, piece, nearest.edge(), measure.depth(), nearest.distance(), inside));
    }
    return places;
  }

  /** Takes off what lies beyond sawn edges, where there is no wood. */
  private Region withoutAir(Region pieces) {
    Region rest = pieces;
    for (StockEnd end : edge.run().ends()) {
      Outline air = end.air(edge.run().runOut() + 8 * depth);
      rest = Overlay.difference(rest, Region.of(air));
    }
    return rest;
  }

  /** Whether the floor stays on the waste side of the edge somewhere: no groove at all. */
  private boolean bitesNothing(Outline piece) {
    Region designed = edge.region();
    Region bit = Region.of(piece);
    Region outside =
        edge.isOutside() ? Overlay.difference(bit, designed) : Overlay.intersection(bit, designed);
    return outside.area() > CRUMB_AREA;
  }

  private Problem notFollowed(Point at, double insideRadius) {
    String hollow =
        insideRadius > CRUMB_DEPTH
            ? "the inside radius of " + Length.print(insideRadius, units)
            : "the sharp inside corner";
    String remedy =
        insideRadius > CRUMB_DEPTH
            ? "take a bearing no wider than " + Length.printAtMost(2 * insideRadius, units)
            : "round the corner or take a smaller bearing";
    return new Problem(
        Place.field(edge.name()),
        String.format(
            Locale.ROOT,
            "the bearing of %s cannot follow %s near x %s, y %s: the slot cutter does not reach the"
                + " edge there and the groove breaks off; %s",
            Length.print(2 * floor.bearingRadius(), units),
            hollow,
            Length.print(at.x(), units),
            Length.print(at.y(), units),
            remedy));
  }

  /** Where floor and edge come nearest to each other. */
  private record Nearest(Point edge, double distance) {}

  private Nearest nearest(Outline piece) {
    Loop designed = edge.contour().loop();
    Point best = piece.outer().primitives().get(0).start();
    double least = Double.POSITIVE_INFINITY;
    for (Primitive bit : piece.outer().primitives()) {
      if (!floorEdge.isWithin(bit.middle(), ALONG)) {
        continue;
      }
      double share =
          Crest.highest(s -> -designed.distanceTo(bit.pointAt(s)), SAMPLES, STEPS).share();
      Point p = bit.pointAt(share);
      double here = designed.distanceTo(p);
      if (here < least) {
        least = here;
        best = p;
      }
    }
    return new Nearest(nearestOn(designed, best), least);
  }

  private static Point nearestOn(Loop loop, Point p) {
    Point best = loop.primitives().get(0).start();
    for (Primitive piece : loop.primitives()) {
      Point near = piece.nearestTo(p);
      if (near.distanceTo(p) < best.distanceTo(p)) {
        best = near;
      }
    }
    return best;
  }
}
