package org.bearingline.routing.grain;

import java.util.Objects;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * A place that splits easily: a neck or limb with little wood along the fibres for how far it
 * reaches across them.
 *
 * @param number from 1, for the drawing
 * @param chord the line along the fibres on which it would split, from edge to edge
 * @param along mm of wood along the fibres: the chord's length
 * @param across mm the wood reaches across the fibres on the chord's shorter side
 * @param ratio along / across
 * @param sentence for the card
 */
public record ShortGrain(
    int number, Path chord, double along, double across, double ratio, String sentence) {

  public ShortGrain {
    Objects.requireNonNull(chord);
    Objects.requireNonNull(sentence);
  }

  /** The middle of the chord. */
  public Point at() {
    return chord.start().towards(chord.end(), 0.5);
  }
}
