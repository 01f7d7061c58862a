package org.bearingline.outline.construct;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;

/** Arcs between two given points. An arc that lies left of its chord turns right, and so on. */
public final class ArcBy {

  /** Sine of the angle below which three points count as a straight row. */
  private static final double STRAIGHT = 1e-9;

  /** How much too long a chord in mm may be for its radius and still be a half circle. */
  private static final double HALF_CIRCLE = 1e-9;

  private ArcBy() {}

  /** The arc from start through a third point to the end; a straight row of points is refused. */
  public static Arc throughPoint(Point start, Point through, Point end) {
    Point toStart = start.minus(through);
    Point toEnd = end.minus(through);
    double cross = toStart.cross(toEnd);
    if (!(Math.abs(cross) > STRAIGHT * toStart.norm() * toEnd.norm())
        || !(start.distanceTo(end) > 0)) {
      throw Sizes.refusal(
          "the three points of the arc lie in a straight row; move one aside or draw a line");
    }
    // The inscribed angle φ at the third point is half of what the arc leaves of the circle, so
    // tan(sweep / 4) = cot(φ / 2); φ runs clockwise where the arc turns left.
    double bulge = -1 / Math.tan(Math.atan2(cross, toStart.dot(toEnd)) / 2);
    return Arc.ofBulge(start, end, bulge);
  }

  /**
   * The arc of the given rise (mm, more than 0) above its chord, lying on the given side of it. A
   * rise of more than half the chord gives more than a half circle.
   */
  public static Arc chordAndRise(Point start, Point end, double rise, Side side) {
    double chord = chord(start, end);
    Sizes.requirePositive("rise", rise);
    return Arc.ofBulge(start, end, -side.sign() * 2 * rise / chord);
  }

  /** The arc of the given radius, lying on the given side; {@code major} takes the longer way. */
  public static Arc chordAndRadius(
      Point start, Point end, double radius, Side side, boolean major) {
    double chord = chord(start, end);
    // Rounding must not refuse the half circle.
    boolean half = chord > 2 * radius && chord - 2 * radius < HALF_CIRCLE;
    double minor = CircleSegment.ofRadiusAndChord(radius, half ? 2 * radius : chord).angle();
    double sweep = major ? 360 - minor : minor;
    Arc arc = Arc.ofBulge(start, end, -side.sign() * Math.tan(Math.toRadians(sweep) / 4));
    return new Arc(arc.center(), radius, start, end, arc.sweep());
  }

  private static double chord(Point start, Point end) {
    double chord = start.distanceTo(end);
    if (!(chord > 0)) {
      throw Sizes.refusal("the arc ends where it starts; give it two different points");
    }
    return chord;
  }
}
