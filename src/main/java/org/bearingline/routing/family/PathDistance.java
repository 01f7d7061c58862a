package org.bearingline.routing.family;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** How far two lines lie apart, whichever pieces each is made of. */
final class PathDistance {

  /** Points looked at on each piece. */
  private static final int SAMPLES = 8;

  private PathDistance() {}

  /** The largest distance in mm of a sampled point of either line from the other. */
  static double between(List<Primitive> a, List<Primitive> b) {
    return Math.max(oneWay(a, b), oneWay(b, a));
  }

  private static double oneWay(List<Primitive> from, List<Primitive> to) {
    double largest = 0;
    for (Primitive piece : from) {
      for (int i = 0; i <= SAMPLES; i++) {
        Point p = piece.pointAt((double) i / SAMPLES);
        double least = Double.POSITIVE_INFINITY;
        for (Primitive other : to) {
          least = Math.min(least, other.distanceTo(p));
        }
        largest = Math.max(largest, least);
      }
    }
    return largest;
  }
}
