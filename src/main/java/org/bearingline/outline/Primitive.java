package org.bearingline.outline;

import java.util.function.Function;

/**
 * One directed piece of an outline: a straight line or a circular arc. All methods that take a
 * share {@code t} mean the share of the arc length, 0 at the start and 1 at the end.
 */
public sealed interface Primitive permits Line, Arc {

  Point start();

  Point end();

  /** Length in mm, more than 0. */
  double length();

  Point pointAt(double t);

  /** Unit vector in the direction of travel at {@code t}. */
  Point tangentAt(double t);

  Bounds bounds();

  /** The same piece travelled the other way. */
  Primitive reversed();

  /** The piece from share {@code from} to share {@code to}, 0 ≤ from &lt; to ≤ 1. */
  Primitive part(double from, double to);

  /** The share at which this piece comes nearest to {@code p}, in [0, 1]. */
  double nearestShare(Point p);

  /**
   * The same piece with its ends moved to the given points, which must lie within the joining
   * tolerance of the present ends; radius and centre stay.
   */
  Primitive withEnds(Point start, Point end);

  Primitive transformed(Similarity similarity);

  /** Signed curvature in 1/mm: positive where the piece turns left, 0 for a line. */
  double curvature();

  /** Answers by kind, so that a new kind cannot be forgotten. */
  <T> T match(Function<Line, T> onLine, Function<Arc, T> onArc);

  default Point middle() {
    return pointAt(0.5);
  }

  default Point nearestTo(Point p) {
    return pointAt(nearestShare(p));
  }

  /** Distance in mm from {@code p} to the nearest point of this piece. */
  default double distanceTo(Point p) {
    return nearestTo(p).distanceTo(p);
  }

  /**
   * Twice the signed area between this piece and {@code about}, its share of Green's formula ∮ x dy
   * − y dx. A point near the piece keeps digits that the origin may lose.
   */
  double doubledSweptArea(Point about);
}
