package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * min |u − v| over points u, v of the edge that see each other square across the waste, with
 * nothing of the edge inside the circle on uv as diameter.
 *
 * <p>Together with the smallest inside radius this gives the largest disc that rolls everywhere
 * along the edge: the reach of a set in Federer's sense (Curvature measures, 1959) is the smaller
 * of the least radius of curvature and half the shortest such segment.
 *
 * @param width mm
 * @param middle of the neck
 */
record Neck(double width, Point middle) {

  /** Nearer than this, in mm, two points are one. */
  private static final double APART = 1e-9;

  /**
   * The narrowest neck of an edge.
   *
   * @param edge primitives in order, wood on the left, each joined to the one before where their
   *     ends agree
   * @param counts for each primitive whether a neck must touch at least one like it
   */
  static Optional<Neck> narrowest(List<Primitive> edge, boolean[] counts) {
    return new Search(edge, counts).run();
  }

  private static final class Search {
    private final List<Primitive> edge;
    private final List<Facing> faces = new ArrayList<>();
    private final List<Boolean> counting = new ArrayList<>();
    private final List<Bounds> boxes = new ArrayList<>();
    private Neck best;
    private double least = Double.POSITIVE_INFINITY;

    Search(List<Primitive> edge, boolean[] counts) {
      this.edge = edge;
      int n = edge.size();
      for (int i = 0; i < n; i++) {
        add(Facing.of(edge.get(i)), counts[i]);
        Primitive next = edge.get((i + 1) % n);
        if (edge.get(i).end().equals(next.start())
            && EdgeCorner.between(edge.get(i), next).isOutside()) {
          add(Facing.Corner.between(edge.get(i), next), counts[i] || counts[(i + 1) % n]);
        }
      }
    }

    private void add(Facing face, boolean counts) {
      faces.add(face);
      counting.add(counts);
      boxes.add(face.bounds());
    }

    Optional<Neck> run() {
      for (int i = 0; i < edge.size(); i++) {
        if (edge.get(i) instanceof Arc arc && arc.sweep() <= -180 + EdgeCorner.SMOOTH) {
          Point across = arc.start().minus(arc.center());
          offer(arc.center().plus(across), arc.center().minus(across));
        }
      }
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < faces.size(); i++) {
        order.add(i);
      }
      order.sort((i, j) -> Double.compare(boxes.get(i).minX(), boxes.get(j).minX()));
      for (int a = 0; a < order.size(); a++) {
        int i = order.get(a);
        for (int b = a + 1; b < order.size(); b++) {
          int j = order.get(b);
          if (boxes.get(j).minX() - boxes.get(i).maxX() >= least) {
            break;
          }
          if ((counting.get(i) || counting.get(j)) && mayBeNearer(boxes.get(i), boxes.get(j))) {
            pair(faces.get(i), faces.get(j));
          }
        }
      }
      return Optional.ofNullable(best);
    }

    private boolean mayBeNearer(Bounds a, Bounds b) {
      double up = Math.max(a.minY() - b.maxY(), b.minY() - a.maxY());
      return up < least;
    }

    private void pair(Facing f, Facing g) {
      if (f instanceof Facing.Straight a && g instanceof Facing.Straight b) {
        straights(a, b);
      } else if (f instanceof Facing.Straight a) {
        straightAndRound(a, g);
      } else if (g instanceof Facing.Straight b) {
        straightAndRound(b, f);
      } else {
        rounds(f, g);
      }
    }

    private void straights(Facing.Straight a, Facing.Straight b) {
      if (a.outward().dot(b.outward()) > -1 + Facing.ALONG) {
        return;
      }
      Point along = a.line().tangentAt(0);
      Point from = a.line().start();
      // Travelled the other way, b covers these shares of a's direction.
      double low = Math.max(0, b.line().end().minus(from).dot(along));
      double high = Math.min(a.line().length(), b.line().start().minus(from).dot(along));
      if (low <= high) {
        Point u = from.plus(along.times((low + high) / 2));
        check(a, u, b, b.line().nearestTo(u));
      }
    }

    private void straightAndRound(Facing.Straight a, Facing g) {
      Point out = a.outward();
      Point u = g.center().minus(out.times(g.center().minus(a.line().start()).dot(out)));
      check(a, u, g, g.center().plus(out.times(g.radius())));
      if (g.radius() > 0) {
        check(a, u, g, g.center().minus(out.times(g.radius())));
      }
    }

    private void rounds(Facing f, Facing g) {
      Point between = g.center().minus(f.center());
      if (between.norm() > APART) {
        along(f, g, between.unit());
      } else {
        // About one centre every common direction will do: the middles and ends of both.
        radial(f, g, f);
        radial(f, g, g);
      }
    }

    private void radial(Facing f, Facing g, Facing through) {
      if (through instanceof Facing.Curved curved) {
        for (double t : new double[] {0, 0.5, 1}) {
          along(f, g, curved.arc().pointAt(t).minus(through.center()).unit());
        }
      }
    }

    private void along(Facing f, Facing g, Point direction) {
      for (int s = f.radius() > 0 ? -1 : 1; s <= 1; s += 2) {
        for (int t = g.radius() > 0 ? -1 : 1; t <= 1; t += 2) {
          check(
              f,
              f.center().plus(direction.times(s * f.radius())),
              g,
              g.center().plus(direction.times(t * g.radius())));
        }
      }
    }

    private void check(Facing f, Point u, Facing g, Point v) {
      double width = u.distanceTo(v);
      if (width >= least || width <= APART) {
        return;
      }
      Point direction = v.minus(u).times(1 / width);
      if (f.looks(u, direction) && g.looks(v, direction.times(-1))) {
        offer(u, v);
      }
    }

    private void offer(Point u, Point v) {
      double width = u.distanceTo(v);
      Point middle = u.towards(v, 0.5);
      if (width >= least) {
        return;
      }
      for (Primitive piece : edge) {
        if (piece.distanceTo(middle) < width / 2 - Facing.ON) {
          return;
        }
      }
      least = width;
      best = new Neck(width, middle);
    }
  }
}
