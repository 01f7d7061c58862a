package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/**
 * Compares a cut edge with the designed one at the ends, the middles and even steps of their
 * pieces, both ways, by exact distances.
 */
final class ProofSamples {

  /** Steps along a piece: one at least every so many mm. */
  private static final double STEP = 5;

  private static final int MOST_STEPS = 64;

  /** A place this near to a named piece, in mm, belongs to it. */
  private static final double NAMED = 1e-5;

  /** How near to an end of the work (mm) a cut edge belongs to the run-out, not to the part. */
  private static final double AT_END = 1e-6;

  private final List<Edge> edges = new ArrayList<>();
  private final List<Outline> named;
  private final NearestEdge designed;
  private double most;
  private Point at = Point.ORIGIN;
  private int count;

  /** One designed primitive. */
  private record Edge(
      String name, Primitive piece, boolean routed, boolean fromSaw, boolean toSaw) {}

  ProofSamples(Part part, List<Outline> named) {
    this.named = named;
    add(Template.OUTSIDE_EDGE, part.contour());
    for (Cavity cavity : part.cavities()) {
      add(cavity.name(), cavity.contour());
    }
    designed = new NearestEdge(edges.stream().map(Edge::piece).toList());
    for (Edge edge : edges) {
      if (edge.routed()) {
        at = edge.piece().start();
        break;
      }
    }
  }

  private void add(String name, Contour contour) {
    int n = contour.loop().size();
    for (int i = 0; i < n; i++) {
      edges.add(
          new Edge(
              name,
              contour.loop().primitives().get(i),
              contour.kinds().get(i) == EdgeKind.ROUTED,
              contour.kinds().get((i + n - 1) % n) == EdgeKind.SAWN,
              contour.kinds().get((i + 1) % n) == EdgeKind.SAWN));
    }
  }

  double most() {
    return most;
  }

  Point at() {
    return at;
  }

  int count() {
    return count;
  }

  void compare(Region made, List<String> serves) {
    NearestEdge cut = NearestEdge.of(made.loops());
    for (Edge edge : edges) {
      if (edge.routed() && serves.contains(edge.name())) {
        for (Point p : points(edge.piece())) {
          take(p, cut.distanceTo(p));
        }
      }
    }
    for (Loop loop : made.loops()) {
      for (Primitive piece : loop.primitives()) {
        for (Point p : points(piece)) {
          if (concerns(p, serves)) {
            take(p, designed.distanceTo(p));
          }
        }
      }
    }
  }

  private void take(Point p, double distance) {
    if (isNamed(p)) {
      return;
    }
    count++;
    if (distance > most) {
      most = distance;
      at = p;
    }
  }

  private boolean isNamed(Point p) {
    for (Outline piece : named) {
      if (piece.bounds().grown(NAMED).contains(p)
          && (piece.distanceTo(p) <= NAMED || piece.contains(p))) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a place of the cut edge lies beside a served routed edge, not its run-out or a saw's.
   */
  private boolean concerns(Point p, List<String> serves) {
    double least = designed.distanceTo(p);
    for (int near : designed.near(p, least + NAMED)) {
      Edge edge = edges.get(near);
      if (!edge.routed() || !serves.contains(edge.name())) {
        continue;
      }
      double share = edge.piece().nearestShare(p);
      Point foot = edge.piece().pointAt(share);
      boolean pastStart = edge.fromSaw() && foot.distanceTo(edge.piece().start()) < AT_END;
      boolean pastEnd = edge.toSaw() && foot.distanceTo(edge.piece().end()) < AT_END;
      if (!pastStart && !pastEnd) {
        return true;
      }
    }
    return false;
  }

  private static List<Point> points(Primitive piece) {
    int steps = (int) Math.min(MOST_STEPS, 2 * Math.ceil(piece.length() / (2 * STEP)));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      points.add(piece.pointAt((double) i / steps));
    }
    return points;
  }
}
