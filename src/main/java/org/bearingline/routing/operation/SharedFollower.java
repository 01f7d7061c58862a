package org.bearingline.routing.operation;

import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * R′ = r′ + (R − r) + w: the follower with which a cutter of radius r′ makes an edge from the
 * template of another one, w being the even width between the two edges, positive where this one
 * lies further from the template's edge.
 */
public final class SharedFollower {

  private static final int STEPS = 16;

  /** Widths that agree to this, in mm, are even. */
  private static final double EVEN = 0.01;

  private SharedFollower() {}

  /**
   * Its diameter in mm, which may come out at 0 or less where no follower is small enough; empty
   * where the two edges do not run parallel or are not both openings or both outer edges.
   */
  public static OptionalDouble diameter(Target mine, Cutter cutter, Routed other) {
    if (mine.outside() != other.edge().outside()) {
      return OptionalDouble.empty();
    }
    Loop own = mine.contour().loop();
    Loop its = other.edge().contour().loop();
    boolean within = its.contains(own.primitives().get(0).middle());
    OptionalDouble width = within ? even(own, its) : even(its, own);
    if (width.isEmpty()) {
      return width;
    }
    double further = within == mine.outside() ? -width.getAsDouble() : width.getAsDouble();
    return OptionalDouble.of(cutter.diameter() + 2 * (other.tool().wider() + further));
  }

  private static OptionalDouble even(Loop inner, Loop outer) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Primitive piece : inner.primitives()) {
      for (int i = 0; i < STEPS; i++) {
        Point p = piece.pointAt((double) i / STEPS);
        double distance = outer.distanceTo(p);
        least = Math.min(least, distance);
        most = Math.max(most, distance);
      }
    }
    return most - least < EVEN ? OptionalDouble.of(most) : OptionalDouble.empty();
  }
}
