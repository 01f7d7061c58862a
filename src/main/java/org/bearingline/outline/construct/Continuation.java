package org.bearingline.outline.construct;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** Pieces that go on tangent to the piece before, or from a point in a direction. */
public final class Continuation {

  /**
   * Radians between direction and chord below which an arc is drawn as a straight: a third of a
   * millionth of a degree, so that even two such straights meet within a millionth.
   */
  private static final double STRAIGHT = 5e-9;

  private Continuation() {}

  /** The straight of {@code length} mm that goes on from the end of {@code before}. */
  public static Line line(Primitive before, double length) {
    return line(before.end(), before.tangentAt(1), length);
  }

  /** The straight of {@code length} mm from a point in a direction in degrees. */
  public static Line line(Point start, double degrees, double length) {
    return line(start, Point.polar(1, degrees), length);
  }

  private static Line line(Point start, Point direction, double length) {
    Sizes.requirePositive("length", length);
    return new Line(start, start.plus(direction.times(length)));
  }

  /** The arc that goes on tangent to {@code before}, turning to a side by up to 360 degrees. */
  public static Arc arc(Primitive before, double radius, Side side, double turn) {
    return arc(before.end(), before.tangentAt(1), radius, side, turn);
  }

  /** The arc from a point in a direction in degrees, turning to a side by up to 360 degrees. */
  public static Arc arc(Point start, double degrees, double radius, Side side, double turn) {
    return arc(start, Point.polar(1, degrees), radius, side, turn);
  }

  private static Arc arc(Point start, Point direction, double radius, Side side, double turn) {
    Sizes.requirePositive("radius", radius);
    Sizes.requireTurn("turn", turn, 360);
    Point center = start.plus(direction.left().times(side.sign() * radius));
    double sweep = side.sign() * turn;
    Point end = turn == 360 ? start : Similarity.rotation(sweep, center).apply(start);
    return new Arc(center, radius, start, end, sweep);
  }

  /** The arc, or the straight where the end lies dead ahead, tangent to {@code before}. */
  public static Primitive to(Primitive before, Point end) {
    return to(before.end(), before.tangentAt(1), end);
  }

  /** The arc, or the straight where the end lies dead ahead, leaving in {@code direction}. */
  public static Primitive to(Point start, Point direction, Point end) {
    Point chord = end.minus(start);
    if (!(chord.norm() > 0)) {
      throw Sizes.refusal("the piece ends where it starts; give it another end");
    }
    Point ahead = direction.unit();
    // Half the sweep: the angle between tangent and chord.
    double half = Math.atan2(ahead.cross(chord), ahead.dot(chord));
    if (Math.abs(half) < STRAIGHT) {
      return new Line(start, end);
    }
    if (Math.PI - Math.abs(half) < STRAIGHT) {
      throw Sizes.refusal("the end lies straight behind the start; no arc turns back to it");
    }
    double radius = chord.norm() / (2 * Math.sin(Math.abs(half)));
    Point center = start.plus(ahead.left().times(Math.signum(half) * radius));
    return new Arc(center, radius, start, end, Math.toDegrees(2 * half));
  }
}
