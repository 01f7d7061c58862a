package org.bearingline.routing;

import java.util.OptionalDouble;
import org.bearingline.part.Part;

/**
 * The largest r for which P closed by D(r) is P itself: the fattest cutter that leaves nothing. It
 * is the smaller of the smallest inside radius (local) and half the narrowest neck (global).
 *
 * @param smallestInsideRadius of the routed edges, mm; 0 at a sharp inside corner; empty where no
 *     routed edge is hollow
 * @param narrowestNeck mm between two edges that face each other across the waste; empty where none
 *     do
 */
public record LargestCutter(OptionalDouble smallestInsideRadius, OptionalDouble narrowestNeck) {

  /** Of the part with all its cavities. */
  public static LargestCutter of(Part part) {
    throw new UnsupportedOperationException();
  }

  /** Diameter in mm; 0 where a sharp inside corner stops every bit; empty where any bit will do. */
  public OptionalDouble diameter() {
    double local = smallestInsideRadius.orElse(Double.POSITIVE_INFINITY) * 2;
    double least = Math.min(local, narrowestNeck.orElse(Double.POSITIVE_INFINITY));
    return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
  }
}
