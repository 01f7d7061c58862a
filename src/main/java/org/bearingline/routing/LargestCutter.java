package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/**
 * The largest r for which P closed by D(r) is P itself: the fattest cutter that leaves nothing. It
 * is the smaller of the smallest inside radius (local) and half the narrowest neck (global), both
 * read off the lines and arcs of the edge.
 *
 * @param smallestInsideRadius of the routed edges, mm; 0 at a sharp inside corner; empty where no
 *     routed edge is hollow
 * @param narrowestNeck mm between two edges that face each other across the waste; empty where none
 *     do
 */
public record LargestCutter(OptionalDouble smallestInsideRadius, OptionalDouble narrowestNeck) {

  /** Room for rounding when a bit is compared with the largest, mm. */
  private static final double ROUNDING = 1e-6;

  /** Of the part with all its cavities. */
  public static LargestCutter of(Part part) {
    LargestCutter all = ofOutside(part.contour());
    for (Cavity cavity : part.cavities()) {
      LargestCutter inside = ofCavity(cavity.contour());
      all =
          new LargestCutter(
              smaller(all.smallestInsideRadius, inside.smallestInsideRadius),
              smaller(all.narrowestNeck, inside.narrowestNeck));
    }
    return all;
  }

  /** Of the outer edge; sawn edges are wood too, and stand in the cutter's way. */
  static LargestCutter ofOutside(Contour contour) {
    List<Primitive> edge = contour.loop().primitives();
    boolean[] routed = new boolean[edge.size()];
    for (int i = 0; i < routed.length; i++) {
      routed[i] = contour.kinds().get(i) == EdgeKind.ROUTED;
    }
    return of(edge, routed);
  }

  /** Of a cavity; a sawn stretch of its edge is the open end of a slot, where nothing stands. */
  static LargestCutter ofCavity(Contour contour) {
    List<Primitive> edge = new ArrayList<>();
    for (int i = 0; i < contour.loop().size(); i++) {
      if (contour.kinds().get(i) == EdgeKind.ROUTED) {
        edge.add(contour.loop().primitives().get(i));
      }
    }
    boolean[] routed = new boolean[edge.size()];
    Arrays.fill(routed, true);
    return of(edge, routed);
  }

  private static LargestCutter of(List<Primitive> edge, boolean[] routed) {
    int n = edge.size();
    double radius = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      Primitive here = edge.get(i);
      Primitive next = edge.get((i + 1) % n);
      if (routed[i] && here.curvature() < 0) {
        radius = Math.min(radius, -1 / here.curvature());
      }
      if ((routed[i] || routed[(i + 1) % n])
          && here.end().equals(next.start())
          && EdgeCorner.between(here, next).isHollow()) {
        radius = 0;
      }
    }
    Optional<Neck> neck = Neck.narrowest(edge, routed);
    return new LargestCutter(
        Double.isInfinite(radius) ? OptionalDouble.empty() : OptionalDouble.of(radius),
        neck.isPresent() ? OptionalDouble.of(neck.get().width()) : OptionalDouble.empty());
  }

  private static OptionalDouble smaller(OptionalDouble a, OptionalDouble b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() ? b : a;
    }
    return OptionalDouble.of(Math.min(a.getAsDouble(), b.getAsDouble()));
  }

  /** Diameter in mm; 0 where a sharp inside corner stops every bit; empty where any bit will do. */
  public OptionalDouble diameter() {
    double local = smallestInsideRadius.orElse(Double.POSITIVE_INFINITY) * 2;
    double least = Math.min(local, narrowestNeck.orElse(Double.POSITIVE_INFINITY));
    return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
  }

  /** Whether a bit of {@code diameter} mm leaves nothing. */
  public boolean allows(double diameter) {
    return diameter <= diameter().orElse(Double.POSITIVE_INFINITY) + ROUNDING;
  }
}
