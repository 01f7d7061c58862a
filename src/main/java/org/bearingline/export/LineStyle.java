package org.bearingline.export;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param ink its colour
 * @param width mm
 * @param dashes lengths in mm of dash, gap, dash, gap …; empty for an unbroken line
 */
public record LineStyle(Ink ink, double width, List<Double> dashes) {

  public LineStyle {
    dashes = List.copyOf(dashes);
    if (!(width > 0) || dashes.size() % 2 != 0 || dashes.stream().anyMatch(d -> !(d > 0))) {
      throw new IllegalArgumentException("a line has a width, and its dashes come in pairs");
    }
  }

  public boolean isSolid() {
    return dashes.isEmpty();
  }

  /** The same line, all its measures times {@code factor}. */
  public LineStyle enlarged(double factor) {
    return new LineStyle(ink, width * factor, dashes.stream().map(d -> d * factor).toList());
  }
}
