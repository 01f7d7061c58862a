package org.bearingline.outline.construct;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Pieces that go on tangent to the piece before, or from a point in a direction. */
public final class Continuation {

  private Continuation() {}

  /** The straight of {@code length} mm that goes on from the end of {@code before}. */
  public static Line line(Primitive before, double length) {
    throw new UnsupportedOperationException();
  }

  /** The straight of {@code length} mm from a point in a direction in degrees. */
  public static Line line(Point start, double degrees, double length) {
    throw new UnsupportedOperationException();
  }

  /** The arc that goes on tangent to {@code before}, turning to a side by up to 360 degrees. */
  public static Arc arc(Primitive before, double radius, Side side, double turn) {
    throw new UnsupportedOperationException();
  }

  /** The arc from a point in a direction in degrees, turning to a side by up to 360 degrees. */
  public static Arc arc(Point start, double degrees, double radius, Side side, double turn) {
    throw new UnsupportedOperationException();
  }

  /** The arc, or the straight where the end lies dead ahead, tangent to {@code before}. */
  public static Primitive to(Primitive before, Point end) {
    throw new UnsupportedOperationException();
  }

  /** The arc, or the straight where the end lies dead ahead, leaving in {@code direction}. */
  public static Primitive to(Point start, Point direction, Point end) {
    throw new UnsupportedOperationException();
  }
}
