package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/** Draws a contour the way one walks along it: so far ahead, so much to the left or right. */
final class Walk {

  private final List<Primitive> pieces = new ArrayList<>();
  private final List<EdgeKind> kinds = new ArrayList<>();
  private final Point first;
  private Point here;
  private double heading;
  private EdgeKind kind = EdgeKind.ROUTED;

  private Walk(Point start, double heading) {
    this.first = start;
    this.here = start;
    this.heading = heading;
  }

  static Walk from(double x, double y, double heading) {
    return new Walk(new Point(x, y), heading);
  }

  Walk sawn() {
    kind = EdgeKind.SAWN;
    return this;
  }

  Walk routed() {
    kind = EdgeKind.ROUTED;
    return this;
  }

  /** Turns on the spot: a sharp corner. */
  Walk turn(double degrees) {
    heading += degrees;
    return this;
  }

  Walk ahead(double length) {
    return to(here.plus(Point.polar(length, heading)));
  }

  Walk to(double x, double y) {
    return to(new Point(x, y));
  }

  private Walk to(Point next) {
    if (next.distanceTo(here) > 1e-9) {
      heading = next.minus(here).degrees();
      add(new Line(here, next));
    }
    return this;
  }

  /** An arc that goes on tangent, turning left by positive degrees and right by negative ones. */
  Walk arc(double radius, double degrees) {
    double side = degrees > 0 ? 90 : -90;
    Point center = here.plus(Point.polar(radius, heading + side));
    Arc arc = Arc.around(center, radius, heading - side, degrees);
    heading += degrees;
    add(new Arc(center, radius, here, arc.end(), degrees));
    return this;
  }

  private void add(Primitive piece) {
    pieces.add(piece);
    kinds.add(kind);
    here = piece.end();
  }

  Point here() {
    return here;
  }

  Contour close() {
    if (here.distanceTo(first) > 1e-6) {
      to(first);
    } else {
      pieces.set(
          pieces.size() - 1,
          pieces.get(pieces.size() - 1).withEnds(pieces.get(pieces.size() - 1).start(), first));
    }
    return new Contour(new Loop(pieces), kinds);
  }

  Part part(String name) {
    return part(name, close());
  }

  static Part part(String name, Contour contour, Cavity... cavities) {
    return new Part(name, "", contour, List.of(cavities), List.of(), List.of());
  }

  static Cavity through(String name, Contour contour) {
    return new Cavity(name, Cavity.Kind.THROUGH, contour, OptionalDouble.empty());
  }

  static Cavity blind(String name, Cavity.Kind kind, Contour contour, double depth) {
    return new Cavity(name, kind, contour, OptionalDouble.of(depth));
  }
}
