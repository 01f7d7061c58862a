package org.bearingline.outside.dxf;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePen;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Problem;

/** Draws one entity. */
final class EntityStrokes {

  /** Sine of the tilt below which a plane is level: rounding of the file's numbers. */
  private static final double LEVEL = 1e-6;

  /** Seen from below, x runs the other way (the arbitrary axis algorithm of the reference). */
  private static final Affine FROM_BELOW = Affine.scaling(-1, 1);

  private final DxfEntity entity;
  private final StrokePen pen;

  private EntityStrokes(DxfEntity entity, StrokePen pen) {
    this.entity = entity;
    this.pen = pen;
  }

  /**
   * From the plane that an entity is drawn in to the drawing's, by its extrusion direction: the
   * identity, or a mirror where it is seen from below; empty where it is tilted.
   */
  static Optional<Affine> plane(DxfEntity entity) {
    double x = entity.number(210, 0);
    double y = entity.number(220, 0);
    double z = entity.number(230, 1);
    if (Math.hypot(x, y) > LEVEL * Math.abs(z) || z == 0) {
      return Optional.empty();
    }
    return Optional.of(z > 0 ? Affine.IDENTITY : FROM_BELOW);
  }

  /**
   * The strokes of an entity; none where it has no length.
   *
   * @param map from the entity's surroundings to the sketch
   * @param pen with the same map, for entities that know no plane of their own
   */
  static List<Stroke> draw(
      DxfEntity entity, Affine map, StrokePen pen, DrawingLimits limits, Tally ignored) {
    switch (entity.kind()) {
      case "LINE" -> {
        pen.moveTo(DxfPoints.one(entity, 10, 20));
        pen.lineTo(DxfPoints.one(entity, 11, 21));
        return pen.strokes();
      }
      case "SPLINE" -> {
        SplineStrokes.draw(entity, map, pen, limits, ignored);
        return pen.strokes();
      }
      default -> {
        Optional<Affine> plane = plane(entity);
        if (plane.isEmpty()) {
          ignored.add("entity in a tilted plane", "entities in tilted planes");
          return List.of();
        }
        // An ELLIPSE and a POLYLINE in space are given in the drawing's own coordinates.
        boolean isOwn =
            entity.kind().equals("ELLIPSE")
                || entity.kind().equals("POLYLINE") && (entity.flags(70) & 8) != 0;
        StrokePen level = isOwn ? pen : new StrokePen(map.of(plane.get()), limits, entity.place());
        boolean isFromBelow = plane.get().equals(FROM_BELOW);
        new EntityStrokes(entity, level).drawInPlane(isFromBelow);
        return level.strokes();
      }
    }
  }

  private void drawInPlane(boolean isFromBelow) {
    switch (entity.kind()) {
      case "ARC" -> {
        double from = entity.number(50);
        double sweep = Degrees.normalised(entity.number(51) - from);
        circle(from, sweep == 0 ? 360 : sweep);
      }
      case "CIRCLE" -> circle(0, 360);
      case "ELLIPSE" -> ellipse(isFromBelow);
      case "LWPOLYLINE", "POLYLINE" -> PolylineStrokes.draw(entity, pen);
      default -> throw new IllegalArgumentException(entity.kind() + " is not read");
    }
  }

  private void circle(double from, double sweep) {
    double radius = entity.number(40);
    if (radius < 0) {
      throw new Problem(
          entity.place(), "the radius of this " + entity.kind() + " is less than 0; redraw it");
    }
    around(DxfPoints.one(entity, 10, 20), new Point(radius, 0), new Point(0, radius), from, sweep);
  }

  private void ellipse(boolean isFromBelow) {
    Point major = DxfPoints.one(entity, 11, 21);
    Point minor = major.left().times(entity.number(40) * (isFromBelow ? -1 : 1));
    double from = Math.toDegrees(entity.number(41, 0));
    double sweep = Degrees.normalised(Math.toDegrees(entity.number(42, 2 * Math.PI)) - from);
    // A whole turn is written as 2 pi, which is not quite one.
    boolean isWhole = sweep < 1e-9 || sweep > 360 - 1e-9;
    around(DxfPoints.one(entity, 10, 20), major, minor, from, isWhole ? 360 : sweep);
  }

  private void around(Point center, Point u, Point v, double from, double sweep) {
    if (u.norm() == 0 || v.norm() == 0) {
      return;
    }
    Point start = on(center, u, v, from);
    Point end = sweep == 360 ? start : on(center, u, v, from + sweep);
    pen.moveTo(start);
    pen.ellipseTo(center, u, v, from, sweep, end);
    pen.lift(sweep == 360);
  }

  private static Point on(Point center, Point u, Point v, double degrees) {
    return center.plus(u.times(Degrees.cos(degrees))).plus(v.times(Degrees.sin(degrees)));
  }
}
