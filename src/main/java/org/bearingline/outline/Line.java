package org.bearingline.outline;

import java.util.Objects;
import java.util.function.Function;

/** A straight piece between two different points. */
public record Line(Point start, Point end) implements Primitive {

  public Line {
    Objects.requireNonNull(start);
    Objects.requireNonNull(end);
    if (start.equals(end)) {
      throw new IllegalArgumentException("a line needs two different points, got " + start);
    }
  }

  @Override
  public double length() {
    return start.distanceTo(end);
  }

  @Override
  public Point pointAt(double t) {
    return t == 1 ? end : start.towards(end, t);
  }

  @Override
  public Point tangentAt(double t) {
    return end.minus(start).unit();
  }

  @Override
  public Bounds bounds() {
    return Bounds.of(start, end);
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line part(double from, double to) {
    return new Line(pointAt(from), pointAt(to));
  }

  @Override
  public double nearestShare(Point p) {
    Point along = end.minus(start);
    double t = p.minus(start).dot(along) / along.dot(along);
    return Math.max(0, Math.min(1, t));
  }

  @Override
  public Line withEnds(Point newStart, Point newEnd) {
    return new Line(newStart, newEnd);
  }

  @Override
  public Line transformed(Similarity similarity) {
    return new Line(similarity.apply(start), similarity.apply(end));
  }

  @Override
  public double curvature() {
    return 0;
  }

  @Override
  public <T> T match(Function<Line, T> onLine, Function<Arc, T> onArc) {
    return onLine.apply(this);
  }

  @Override
  public double doubledSweptArea(Point about) {
    return start.minus(about).cross(end.minus(about));
  }
}
