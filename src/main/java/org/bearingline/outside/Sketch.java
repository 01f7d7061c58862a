package org.bearingline.outside;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A drawing as its file has it, before cleaning; y upwards.
 *
 * @param file as the user named it, for messages
 * @param figures what was drawn, at least one
 * @param sized whether lengths are mm; where not, they are the drawing's own units and the maker
 *     must say a width or a height
 * @param noise how far, in mm (or the drawing's units), its points may lie from the line that was
 *     meant; empty where the drawing is exact
 * @param ignored what was in the file and is not here, one short phrase each, such as {@code 3
 *     texts}
 */
public record Sketch(
    String file, List<Figure> figures, boolean sized, OptionalDouble noise, List<String> ignored) {

  public Sketch {
    Objects.requireNonNull(file);
    figures = List.copyOf(figures);
    Objects.requireNonNull(noise);
    ignored = List.copyOf(ignored);
    if (figures.isEmpty()) {
      throw new IllegalArgumentException("a sketch has at least one figure");
    }
  }
}
