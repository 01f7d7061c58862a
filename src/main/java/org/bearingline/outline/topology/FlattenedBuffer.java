package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Buffers of a region whose arcs are flattened to chords, by JTS. */
public final class FlattenedBuffer {

  /** The default leaves out hollows of a hundredth of the distance: far too much for a template. */
  private static final double SIMPLIFY = 1e-4;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private FlattenedBuffer() {}

  /**
   * The corners of the region's buffers, one distance after the other (positive grows), each ring a
   * list without its last corner repeated.
   *
   * @param chord mm by which a chord may miss its arc
   */
  public static List<List<Point>> rings(Region region, double chord, double... distances) {
    List<Polygon> polygons = new ArrayList<>();
    for (Outline outline : region.pieces()) {
      polygons.add(polygon(outline, chord));
    }
    Geometry shape = FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
    for (double distance : distances) {
      BufferParameters parameters = new BufferParameters(quadrantSegments(distance, chord));
      parameters.setSimplifyFactor(SIMPLIFY);
      shape = new BufferOp(shape, parameters).getResultGeometry(distance);
    }
    List<List<Point>> rings = new ArrayList<>();
    for (int g = 0; g < shape.getNumGeometries(); g++) {
      if (shape.getGeometryN(g) instanceof Polygon polygon && !polygon.isEmpty()) {
        rings.add(corners(polygon.getExteriorRing()));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
          rings.add(corners(polygon.getInteriorRingN(i)));
        }
      }
    }
    return rings;
  }

  static Polygon polygon(Outline outline, double chord) {
    LinearRing[] holes = new LinearRing[outline.openings().size()];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = ring(outline.openings().get(i), chord);
    }
    return FACTORY.createPolygon(ring(outline.outer(), chord), holes);
  }

  private static int quadrantSegments(double distance, double chord) {
    return Math.max(8, (int) Math.ceil(Math.PI / 2 / step(Math.abs(distance), chord)));
  }

  // Radians of a step whose chord misses by r (1 − cos(step / 2)) = 2 r sin²(step / 4): the first
  // form says 0 where r is great.
  private static double step(double radius, double chord) {
    return 4 * Math.asin(Math.sqrt(Math.min(0.5, chord / (2 * radius))));
  }

  private static LinearRing ring(Loop loop, double chord) {
    List<Coordinate> corners = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      int parts = 1;
      if (piece instanceof Arc arc) {
        double sweep = Math.toRadians(Math.abs(arc.sweep()));
        parts = Math.max(2, (int) Math.ceil(sweep / step(arc.radius(), chord)));
      }
      for (int i = 0; i < parts; i++) {
        Point p = piece.pointAt((double) i / parts);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    if (corners.size() < 3) {
      Point p = loop.primitives().get(0).middle();
      corners.add(1, new Coordinate(p.x(), p.y()));
    }
    corners.add(corners.get(0).copy());
    return FACTORY.createLinearRing(corners.toArray(new Coordinate[0]));
  }

  private static List<Point> corners(LinearRing ring) {
    Coordinate[] all = ring.getCoordinates();
    List<Point> corners = new ArrayList<>(all.length);
    for (int i = 0; i + 1 < all.length; i++) {
      corners.add(new Point(all[i].x, all[i].y));
    }
    return corners;
  }
}
