package org.bearingline.outline.fit;

import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/** Finds the mirror or half turn that carries a span, run backwards, onto itself. */
final class Symmetry {

  private static final int SAMPLES = 48;

  /** Share of the coordinates' size within which points count as images: rounding only. */
  private static final double ROUNDING = 2e-12;

  private Symmetry() {}

  /** Carries the point at share s of the span to the point at share 1 − s. */
  static Optional<Similarity> of(Span span) {
    Point start = span.start();
    Point end = span.end();
    Point middle = span.at(0.5);
    Similarity halfTurn = Similarity.rotation(180, start.towards(end, 0.5));
    if (carries(halfTurn, span)) {
      return Optional.of(halfTurn);
    }
    Point center = start.towards(end, 0.5);
    Point across = end.minus(start);
    double none = ROUNDING * Math.max(1, Math.max(extent(start), extent(middle)));
    // A closed span is mirrored in the line through its start and its middle.
    Point axis = across.norm() > none ? across.left() : middle.minus(start);
    if (!(axis.norm() > none)) {
      return Optional.empty();
    }
    Similarity mirror = Similarity.mirror(center, center.plus(axis));
    return carries(mirror, span) ? Optional.of(mirror) : Optional.empty();
  }

  private static boolean carries(Similarity map, Span span) {
    int samples = span.samples(SAMPLES);
    double size = Math.max(1, Math.max(extent(span.start()), extent(span.at(0.5))));
    for (int i = 0; i <= samples; i++) {
      double s = (double) i / samples;
      Point p = span.at(s);
      size = Math.max(size, extent(p));
      if (map.apply(p).distanceTo(span.at(1 - s)) > ROUNDING * size) {
        return false;
      }
    }
    return true;
  }

  private static double extent(Point p) {
    return Math.max(Math.abs(p.x()), Math.abs(p.y()));
  }
}
