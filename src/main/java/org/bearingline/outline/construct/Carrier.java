package org.bearingline.outline.construct;

import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** The endless straight or the whole circle that something lies on. */
sealed interface Carrier {

  record Straight(Point point, Point direction) implements Carrier {}

  record Circle(Point center, double radius) implements Carrier {}

  /**
   * Where the centre of a circle of {@code radius} lies that touches {@code piece} on its given
   * side; none where an arc is too tight to be touched on its inside.
   */
  static List<Carrier> ofTouchingCenters(Primitive piece, double radius, Side side) {
    return piece.match(line -> touching(line, radius, side), arc -> touching(arc, radius, side));
  }

  private static List<Carrier> touching(Line line, double radius, Side side) {
    Point direction = line.tangentAt(0);
    Point aside = direction.left().times(side.sign() * radius);
    return List.of(new Straight(line.start().plus(aside), direction));
  }

  private static List<Carrier> touching(Arc arc, double radius, Side side) {
    boolean inside = arc.isCounterClockwise() == (side == Side.LEFT);
    double distance = inside ? arc.radius() - radius : arc.radius() + radius;
    return distance > 0 ? List.of(new Circle(arc.center(), distance)) : List.of();
  }

  /** The common points; one where the two only touch, none where they run apart or coincide. */
  static List<Point> meetings(Carrier a, Carrier b) {
    if (a instanceof Straight s && b instanceof Straight t) {
      double cross = s.direction().cross(t.direction());
      return cross == 0
          ? List.of()
          : List.of(s.point().plus(s.direction().times(share(s, t) / cross)));
    }
    if (a instanceof Straight s && b instanceof Circle c) {
      return meetings(s, c);
    }
    if (a instanceof Circle c && b instanceof Straight s) {
      return meetings(s, c);
    }
    return meetings((Circle) a, (Circle) b);
  }

  private static double share(Straight s, Straight t) {
    return t.point().minus(s.point()).cross(t.direction());
  }

  private static List<Point> meetings(Straight s, Circle c) {
    Point toCenter = c.center().minus(s.point());
    double off = s.direction().cross(toCenter);
    Point foot = s.point().plus(s.direction().times(s.direction().dot(toCenter)));
    return spread(foot, s.direction(), (c.radius() - off) * (c.radius() + off), c.radius());
  }

  private static List<Point> meetings(Circle c, Circle d) {
    Point across = d.center().minus(c.center());
    double distance = across.norm();
    if (distance == 0) {
      return List.of();
    }
    Point direction = across.unit();
    double along =
        (distance + (c.radius() - d.radius()) * (c.radius() + d.radius()) / distance) / 2;
    Point foot = c.center().plus(direction.times(along));
    double half2 = (c.radius() - along) * (c.radius() + along);
    return spread(foot, direction.left(), half2, Math.max(c.radius(), d.radius()));
  }

  // Within rounding of a touch the two points are one.
  private static List<Point> spread(Point foot, Point direction, double half2, double scale) {
    double touch = 1e-12 * scale * scale;
    if (half2 < -touch) {
      return List.of();
    }
    if (half2 <= touch) {
      return List.of(foot);
    }
    Point half = direction.times(Math.sqrt(half2));
    return List.of(foot.minus(half), foot.plus(half));
  }
}
