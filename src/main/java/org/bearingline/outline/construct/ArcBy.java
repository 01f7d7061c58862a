package org.bearingline.outline.construct;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;

/** Arcs between two given points. */
public final class ArcBy {

  private ArcBy() {}

  /** The arc from start through a third point to the end; a straight row of points is refused. */
  public static Arc throughPoint(Point start, Point through, Point end) {
    throw new UnsupportedOperationException();
  }

  /** The arc of the given rise (mm, more than 0), lying on the given side of its chord. */
  public static Arc chordAndRise(Point start, Point end, double rise, Side side) {
    throw new UnsupportedOperationException();
  }

  /** The arc of the given radius, lying on the given side; {@code major} takes the longer way. */
  public static Arc chordAndRadius(
      Point start, Point end, double radius, Side side, boolean major) {
    throw new UnsupportedOperationException();
  }
}
