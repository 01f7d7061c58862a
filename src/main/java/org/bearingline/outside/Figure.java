package org.bearingline.outside;

import java.util.List;
import java.util.Objects;

/**
 * One element of a drawing: its strokes and how they count together.
 *
 * @param strokes at least one
 * @param rule how its own loops nest; loops of different figures nest by {@link FillRule#EVEN_ODD}
 * @param filled whether it is an area: painted inside in a format that paints, and in any other
 * @param source what and where it is in its file, for messages: {@code “path #apron, line 12”}
 */
public record Figure(List<Stroke> strokes, FillRule rule, boolean filled, String source) {

  /** A figure that is an area where it has a fill. */
  public Figure(List<Stroke> strokes, FillRule rule, String source) {
    this(strokes, rule, rule != FillRule.UNFILLED, source);
  }

  public Figure {
    strokes = List.copyOf(strokes);
    Objects.requireNonNull(rule);
    Objects.requireNonNull(source);
    if (strokes.isEmpty()) {
      throw new IllegalArgumentException("a figure has at least one stroke");
    }
  }
}
