package org.bearingline.outline;

import java.util.Objects;
import java.util.function.Function;

/**
 * A circular arc. Centre and radius are kept as given, so concentric offsets keep exact radii; both
 * ends are kept too, so neighbours in a loop meet to the last bit.
 *
 * @param center centre of the circle
 * @param radius mm, more than 0
 * @param start on the circle
 * @param end on the circle; equal to start only for a full circle
 * @param sweep degrees turned from start to end, counter-clockwise positive, in [-360, 360], not 0
 */
public record Arc(Point center, double radius, Point start, Point end, double sweep)
    implements Primitive {

  /** How far an end may lie off the circle: room for rounding, far below what a shop can see. */
  private static final double ON_CIRCLE = 1e-6;

  public Arc {
    Objects.requireNonNull(center);
    if (!(radius > 0) || !Double.isFinite(radius)) {
      throw new IllegalArgumentException("an arc needs a positive radius, got " + radius);
    }
    if (sweep == 0 || !(Math.abs(sweep) <= 360)) {
      throw new IllegalArgumentException("an arc sweeps up to 360° and not 0, got " + sweep);
    }
    double slack = ON_CIRCLE * Math.max(1, radius);
    if (Math.abs(center.distanceTo(start) - radius) > slack
        || Math.abs(center.distanceTo(end) - radius) > slack) {
      throw new IllegalArgumentException("the ends of an arc lie on its circle");
    }
  }

  /** The arc that starts in direction {@code startDegrees} from the centre and turns on. */
  public static Arc around(Point center, double radius, double startDegrees, double sweep) {
    Point start = center.plus(Point.polar(radius, startDegrees));
    Point end =
        Math.abs(sweep) == 360 ? start : center.plus(Point.polar(radius, startDegrees + sweep));
    return new Arc(center, radius, start, end, sweep);
  }

  /** A whole counter-clockwise circle that starts on the right. */
  public static Arc circle(Point center, double radius) {
    return around(center, radius, 0, 360);
  }

  /**
   * The arc about {@code center} from start to end in the given sense. Both must be equally far
   * from the centre; equal points give a full circle.
   */
  public static Arc between(Point start, Point end, Point center, boolean counterClockwise) {
    double turn =
        Degrees.normalised(Degrees.of(end.minus(center)) - Degrees.of(start.minus(center)));
    double sweep;
    if (start.equals(end)) {
      sweep = counterClockwise ? 360 : -360;
    } else {
      sweep = counterClockwise ? turn : turn - 360;
    }
    double radius = (center.distanceTo(start) + center.distanceTo(end)) / 2;
    return new Arc(center, radius, start, end, sweep);
  }

  /**
   * The arc with the given bulge, tan(sweep / 4), as in the DXF reference for LWPOLYLINE: positive
   * turns left, 1 is a half circle.
   */
  public static Arc ofBulge(Point start, Point end, double bulge) {
    double chord = start.distanceTo(end);
    if (bulge == 0 || chord == 0 || !Double.isFinite(bulge)) {
      throw new IllegalArgumentException(
          "a bulge of " + bulge + " over " + chord + " mm is no arc");
    }
    double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    // Signed distance from the chord's middle to the centre, to the left of travel.
    double apothem = chord * (1 - bulge * bulge) / (4 * bulge);
    Point left = end.minus(start).unit().left();
    Point center = start.towards(end, 0.5).plus(left.times(apothem));
    return new Arc(center, radius, start, end, Math.toDegrees(4 * Math.atan(bulge)));
  }

  public boolean isCounterClockwise() {
    return sweep > 0;
  }

  public boolean isFullCircle() {
    return Math.abs(sweep) == 360;
  }

  /** Direction of the start from the centre, in (-180, 180]. */
  public double startDegrees() {
    return Degrees.of(start.minus(center));
  }

  /** The DXF bulge, tan(sweep / 4); a full circle has none. */
  public double bulge() {
    return Math.tan(Math.toRadians(sweep) / 4);
  }

  /** Whether the direction {@code degrees} from the centre falls on this arc, ends included. */
  public boolean covers(double degrees) {
    double from = startDegrees();
    double turn =
        sweep > 0 ? Degrees.normalised(degrees - from) : Degrees.normalised(from - degrees);
    return turn <= Math.abs(sweep);
  }

  @Override
  public double length() {
    return radius * Math.toRadians(Math.abs(sweep));
  }

  @Override
  public Point pointAt(double t) {
    if (t == 0) {
      return start;
    }
    if (t == 1) {
      return end;
    }
    return turned(start, t);
  }

  // Turning the stored start keeps the angle's rounding out of the result.
  private Point turned(Point p, double t) {
    double c = Degrees.cos(sweep * t);
    double s = Degrees.sin(sweep * t);
    double dx = p.x() - center.x();
    double dy = p.y() - center.y();
    return new Point(center.x() + c * dx - s * dy, center.y() + s * dx + c * dy);
  }

  @Override
  public Point tangentAt(double t) {
    Point outward = pointAt(t).minus(center).unit();
    return sweep > 0 ? outward.left() : outward.left().times(-1);
  }

  @Override
  public Bounds bounds() {
    Bounds box = Bounds.of(start, end);
    for (int quarter = 0; quarter < 4; quarter++) {
      if (covers(quarter * 90)) {
        box = box.union(Bounds.of(center.plus(Point.polar(radius, quarter * 90))));
      }
    }
    return box;
  }

  @Override
  public Arc reversed() {
    return new Arc(center, radius, end, start, -sweep);
  }

  @Override
  public Arc part(double from, double to) {
    return new Arc(center, radius, pointAt(from), pointAt(to), sweep * (to - from));
  }

  @Override
  public double nearestShare(Point p) {
    if (p.equals(center)) {
      return 0;
    }
    double turn = Degrees.of(p.minus(center)) - startDegrees();
    double along = sweep > 0 ? Degrees.normalised(turn) : Degrees.normalised(-turn);
    double whole = Math.abs(sweep);
    if (along <= whole) {
      return along / whole;
    }
    return p.distanceTo(start) <= p.distanceTo(end) ? 0 : 1;
  }

  @Override
  public Arc withEnds(Point newStart, Point newEnd) {
    return new Arc(center, radius, newStart, newEnd, sweep);
  }

  @Override
  public Arc transformed(Similarity similarity) {
    return new Arc(
        similarity.apply(center),
        radius * similarity.factor(),
        similarity.apply(start),
        similarity.apply(end),
        similarity.mirrored() ? -sweep : sweep);
  }

  @Override
  public double curvature() {
    return sweep > 0 ? 1 / radius : -1 / radius;
  }

  @Override
  public <T> T match(Function<Line, T> onLine, Function<Arc, T> onArc) {
    return onArc.apply(this);
  }

  @Override
  public double doubledSweptArea(Point about) {
    // The chord's triangle and the segment between chord and arc: no large terms that cancel.
    double chord = start.minus(about).cross(end.minus(about));
    return chord + doubledSegment(radius, Math.toRadians(sweep));
  }

  /**
   * Twice the signed area in mm² between an arc and its chord, r²(φ − sin φ), for a signed sweep φ
   * in radians.
   */
  public static double doubledSegment(double radius, double sweep) {
    if (Math.abs(sweep) > 0.1) {
      return radius * radius * (sweep - Math.sin(sweep));
    }
    // The Taylor series, where the difference would lose its digits.
    double q = sweep * sweep;
    return radius * radius * sweep * q / 6 * (1 - q / 20 * (1 - q / 42 * (1 - q / 72)));
  }
}
