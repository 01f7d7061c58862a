package org.bearingline.outside;

import java.util.stream.DoubleStream;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;

/**
 * A map of the plane that keeps straight lines straight and parallels parallel, as drawings use it:
 * (x, y) goes to (a x + c y + e, b x + d y + f), the six numbers in the order of SVG's {@code
 * matrix(a b c d e f)}.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {

  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  public static Affine translation(double dx, double dy) {
    return new Affine(1, 0, 0, 1, dx, dy);
  }

  public static Affine scaling(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  /** Turns by {@code degrees} about the origin, from the x axis towards the y axis. */
  public static Affine rotation(double degrees) {
    double c = Degrees.cos(degrees);
    double s = Degrees.sin(degrees);
    return new Affine(c, s, -s, c, 0, 0);
  }

  /** The map that does {@code inner} first and then this. */
  public Affine of(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  /** The map back; fails where this one lays everything on a line. */
  public Affine inverse() {
    double area = a * d - b * c;
    if (!(Math.abs(area) > 0)) {
      throw new IllegalArgumentException("a map that flattens the plane has no way back");
    }
    return new Affine(
        d / area, -b / area, -c / area, a / area, (c * f - d * e) / area, (b * e - a * f) / area);
  }

  public Point apply(double x, double y) {
    return new Point(a * x + c * y + e, b * x + d * y + f);
  }

  public Point apply(Point p) {
    return apply(p.x(), p.y());
  }

  /** Where a vector goes: turned and stretched, not moved. */
  public Point applyToVector(Point v) {
    return new Point(a * v.x() + c * v.y(), b * v.x() + d * v.y());
  }

  /** Whether no number is larger than {@code most}. */
  boolean isWithin(double most) {
    return DoubleStream.of(a, b, c, d, e, f).allMatch(number -> Math.abs(number) <= most);
  }
}
