package org.bearingline.routing.operation;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * A hole to drill, marked through the template.
 *
 * @param at its centre, as seen from face A
 * @param diameter mm, more than 0
 * @param depth mm from the face it is drilled from; empty right through
 * @param label for the mark
 */
public record Hole(Point at, double diameter, OptionalDouble depth, String label) {

  public Hole {
    Objects.requireNonNull(at);
    Objects.requireNonNull(label);
    if (!(diameter > 0)) {
      throw new IllegalArgumentException("a hole has a diameter above 0");
    }
  }

  static List<Hole> mirrored(List<Hole> holes, Similarity mirror) {
    return holes.stream()
        .map(hole -> new Hole(mirror.apply(hole.at), hole.diameter, hole.depth, hole.label))
        .toList();
  }
}
