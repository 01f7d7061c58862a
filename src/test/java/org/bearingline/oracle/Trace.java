package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Draws a loop step by step; steps of no length are left out. */
final class Trace {

  private final List<Primitive> pieces = new ArrayList<>();
  private final Point start;
  private Point at;

  private Trace(Point start) {
    this.start = start;
    this.at = start;
  }

  static Trace from(double x, double y) {
    return new Trace(new Point(x, y));
  }

  double x() {
    return at.x();
  }

  double y() {
    return at.y();
  }

  Trace to(double x, double y) {
    return to(new Point(x, y));
  }

  Trace to(Point next) {
    if (!next.equals(at)) {
      pieces.add(new Line(at, next));
      at = next;
    }
    return this;
  }

  Trace by(double dx, double dy) {
    return to(at.x() + dx, at.y() + dy);
  }

  Trace bulge(double x, double y, double bulge) {
    if (bulge == 0) {
      return to(x, y);
    }
    Point next = new Point(x, y);
    pieces.add(Arc.ofBulge(at, next, bulge));
    at = next;
    return this;
  }

  /** The arc round (cx, cy) to (x, y). */
  Trace round(double cx, double cy, double x, double y, boolean counterClockwise) {
    Point next = new Point(x, y);
    pieces.add(Arc.between(at, next, new Point(cx, cy), counterClockwise));
    at = next;
    return this;
  }

  List<Primitive> pieces() {
    return List.copyOf(pieces);
  }

  Loop closed() {
    to(start);
    return new Loop(pieces);
  }
}
