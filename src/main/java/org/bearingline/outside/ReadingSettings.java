package org.bearingline.outside;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a maker says about a drawing's file.
 *
 * @param layer the one layer to take: of DXF a layer's name, of SVG a group's id or label; empty
 *     for all that can be seen
 * @param unit mm that one unit of the drawing stands for, whatever the file says; empty where the
 *     maker did not say
 */
public record ReadingSettings(Optional<String> layer, OptionalDouble unit) {

  /** All that can be seen, at the drawing's own size. */
  public static final ReadingSettings USUAL =
      new ReadingSettings(Optional.empty(), OptionalDouble.empty());

  public ReadingSettings {
    Objects.requireNonNull(layer);
    Objects.requireNonNull(unit);
  }
}
