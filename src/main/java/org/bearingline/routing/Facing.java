package org.bearingline.routing;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A piece or an outside corner of an edge that can face another across the waste: the directions
 * square to it, out of the wood.
 */
sealed interface Facing {

  /** How far a point may lie off a piece and still count as on it, mm. */
  double ON = 1e-7;

  /** How far a direction may lie outside those of a corner (sine), or off a normal (cosine). */
  double ALONG = 1e-9;

  Bounds bounds();

  /** Whether the piece has the point {@code u} and {@code direction} leads square out of it. */
  boolean looks(Point u, Point direction);

  /** The centre of the circle it lies on; for a line, null. */
  Point center();

  /** The radius of that circle; 0 for a corner. */
  double radius();

  static Facing of(Primitive piece) {
    return piece.match(Straight::new, Curved::new);
  }

  /** A straight piece, wood on its left. */
  record Straight(Line line) implements Facing {
    Point outward() {
      return line.tangentAt(0).left().times(-1);
    }

    @Override
    public Bounds bounds() {
      return line.bounds();
    }

    @Override
    public boolean looks(Point u, Point direction) {
      return outward().dot(direction) > 1 - ALONG && line.distanceTo(u) <= ON;
    }

    @Override
    public Point center() {
      return null;
    }

    @Override
    public double radius() {
      return 0;
    }
  }

  /** An arc, wood on its left: inside a counter-clockwise one, outside a clockwise one. */
  record Curved(Arc arc) implements Facing {
    @Override
    public Bounds bounds() {
      return arc.bounds();
    }

    @Override
    public boolean looks(Point u, Point direction) {
      Point outward = u.minus(arc.center()).times(arc.sweep() > 0 ? 1 : -1);
      return outward.dot(direction) > (1 - ALONG) * outward.norm() && arc.distanceTo(u) <= ON;
    }

    @Override
    public Point center() {
      return arc.center();
    }

    @Override
    public double radius() {
      return arc.radius();
    }
  }

  /**
   * An outside corner.
   *
   * @param at the corner
   * @param from normal of the piece before it
   * @param to normal of the piece after it, less than a half turn to the left of {@code from}
   */
  record Corner(Point at, Point from, Point to) implements Facing {
    static Corner between(Primitive before, Primitive after) {
      return new Corner(
          before.end(), before.tangentAt(1).left().times(-1), after.tangentAt(0).left().times(-1));
    }

    @Override
    public Bounds bounds() {
      return Bounds.of(at);
    }

    @Override
    public boolean looks(Point u, Point direction) {
      return from.cross(direction) >= -ALONG && direction.cross(to) >= -ALONG;
    }

    @Override
    public Point center() {
      return at;
    }

    @Override
    public double radius() {
      return 0;
    }
  }
}
