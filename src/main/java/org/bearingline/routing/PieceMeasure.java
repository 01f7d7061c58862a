package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Crest;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The measures of a piece between the designed edge and the cut edge: depth = max over points p of
 * the designed edge of the distance from p to the cut edge. At a sharp corner of angle θ that is r
 * (1/sin(θ/2) − 1), in a hollow arc of radius ρ that turns by α it is (r − ρ)(1/cos(α/2) − 1).
 *
 * @param at the deepest point
 * @param depth mm
 * @param insideRadius smallest hollow radius of the designed edge, mm; 0 where sharp; half the
 *     narrowest width in a neck
 * @param neck whether walls face each other across the piece
 */
record PieceMeasure(Point at, double depth, double insideRadius, boolean neck) {

  /** A piece's edge this near to another, in mm, runs along it. */
  private static final double ALONG = 2.5e-5;

  /** Walls that turn by half a circle between them face each other; degrees, less rounding. */
  private static final double FACING = 180 - 0.01;

  private static final int SAMPLES = 16;

  private static final int STEPS = 60;

  static PieceMeasure of(Outline piece, NearestEdge designed, NearestEdge cutEdges) {
    List<Primitive> wall = new ArrayList<>();
    List<Primitive> cut = new ArrayList<>();
    int stretches = sort(piece, designed, cutEdges, wall, cut);
    Point at = piece.outer().primitives().get(0).start();
    double depth = 0;
    for (Primitive part : wall) {
      double share = Crest.highest(s -> distance(cut, part.pointAt(s)), SAMPLES, STEPS).share();
      double here = distance(cut, part.pointAt(share));
      if (here > depth) {
        depth = here;
        at = part.pointAt(share);
      }
    }
    Hollow hollow = Hollow.of(wall);
    boolean neck = stretches > 1 || hollow.turn() >= FACING;
    double radius = hollow.radius();
    if (neck) {
      Optional<Neck> narrowest = narrowest(wall);
      if (narrowest.isPresent()) {
        radius = Math.min(radius, narrowest.get().width() / 2);
      }
    }
    return new PieceMeasure(at, depth, Double.isInfinite(radius) ? 0 : radius, neck);
  }

  /** Parts the piece's edge; says how many stretches of it are the cutter's. */
  private static int sort(
      Outline piece,
      NearestEdge designed,
      NearestEdge cutEdges,
      List<Primitive> wall,
      List<Primitive> cut) {
    int stretches = 0;
    for (Loop loop : piece.loops()) {
      List<Primitive> edge = loop.primitives();
      boolean[] isCut = new boolean[edge.size()];
      for (int i = 0; i < edge.size(); i++) {
        Point middle = edge.get(i).middle();
        if (designed.isWithin(middle, ALONG)) {
          wall.add(edge.get(i));
        } else if (cutEdges.isWithin(middle, ALONG)) {
          cut.add(edge.get(i));
          isCut[i] = true;
        }
      }
      for (int i = 0; i < edge.size(); i++) {
        if (isCut[i] && !isCut[(i + 1) % edge.size()]) {
          stretches++;
        }
      }
    }
    return stretches;
  }

  private static double distance(List<Primitive> cut, Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : cut) {
      least = Math.min(least, piece.distanceTo(p));
    }
    return Double.isInfinite(least) ? 0 : least;
  }

  private static Optional<Neck> narrowest(List<Primitive> wall) {
    List<Primitive> woodOnLeft = new ArrayList<>();
    boolean[] counts = new boolean[wall.size()];
    for (int i = wall.size() - 1; i >= 0; i--) {
      counts[woodOnLeft.size()] = true;
      woodOnLeft.add(wall.get(i).reversed());
    }
    return Neck.narrowest(woodOnLeft, counts);
  }

  /**
   * How hollow a wall is, seen from the waste on its left.
   *
   * @param turn degrees that its hollow arcs and corners turn together
   * @param radius the smallest, 0 for a sharp corner, infinite where there is none
   */
  private record Hollow(double turn, double radius) {
    static Hollow of(List<Primitive> wall) {
      double turn = 0;
      double radius = Double.POSITIVE_INFINITY;
      int n = wall.size();
      for (int i = 0; i < n; i++) {
        Primitive here = wall.get(i);
        Primitive next = wall.get((i + 1) % n);
        if (here.curvature() > 0) {
          turn += Math.toDegrees(here.length() * here.curvature());
          radius = Math.min(radius, 1 / here.curvature());
        }
        EdgeCorner corner = EdgeCorner.between(here, next);
        if (here.end().equals(next.start()) && corner.isOutside()) {
          turn += corner.turn();
          radius = 0;
        }
      }
      return new Hollow(turn, radius);
    }
  }
}
