package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Offsets of a flattened copy by the JTS polygon buffer, with what it may be wrong by. */
public final class JtsReference {

  /** Concave detail up to this share of the distance may go; the default of 1 % is far too much. */
  private static final double SIMPLIFY_FACTOR = 1e-4;

  /** JTS joins neighbouring offset ends nearer than this share of the distance without a fillet. */
  private static final double NO_FILLET = 0.05;

  private final GeometryFactory factory = new GeometryFactory();
  private final double tolerance;

  /**
   * @param tolerance mm that chords may miss arcs by, of the input and of the fillets
   */
  public JtsReference(double tolerance) {
    this.tolerance = tolerance;
  }

  /** The region with inscribed chords. */
  public Geometry flat(Region region) {
    List<Polygon> polygons = new ArrayList<>();
    for (Outline outline : region.pieces()) {
      LinearRing[] holes = outline.openings().stream().map(this::ring).toArray(LinearRing[]::new);
      polygons.add(factory.createPolygon(ring(outline.outer()), holes));
    }
    return polygons.size() == 1
        ? polygons.get(0)
        : factory.createMultiPolygon(polygons.toArray(Polygon[]::new));
  }

  private LinearRing ring(Loop loop) {
    List<Coordinate> points = new ArrayList<>();
    loop.primitives().stream().map(Edge::of).forEach(edge -> addChords(edge, points));
    points.add(points.get(0).copy());
    return factory.createLinearRing(points.toArray(Coordinate[]::new));
  }

  private void addChords(Edge edge, List<Coordinate> points) {
    int chords =
        edge.isArc() ? (int) Math.ceil(Math.abs(edge.sweep()) / step(edge.r(), tolerance)) : 1;
    points.add(new Coordinate(edge.ax(), edge.ay()));
    for (int i = 1; i < chords; i++) {
      points.add(new Coordinate(edge.x((double) i / chords), edge.y((double) i / chords)));
    }
  }

  /** The angle whose chord misses a circle of radius {@code r} by {@code height}, at most 90°. */
  private static double step(double r, double height) {
    return height >= r ? Math.PI / 2 : Math.min(Math.PI / 2, 2 * Math.acos(1 - height / r));
  }

  public Geometry buffer(Geometry flat, double distance) {
    BufferParameters parameters = new BufferParameters();
    double quarter = Math.PI / 2 / step(Math.abs(distance), tolerance);
    parameters.setQuadrantSegments((int) Math.ceil(quarter));
    parameters.setSimplifyFactor(SIMPLIFY_FACTOR);
    return new BufferOp(flat, parameters).getResultGeometry(distance);
  }

  /**
   * How far the edge of {@link #buffer} may lie from the true one: the chord error of the input,
   * the chord error of the fillets, what the simplifier may take, and the missing fillets. Where
   * chords turn by θ and no fillet is made, the one vertex is off by at most d θ² / 2; θ is the
   * turn between chords of the smallest arc, and never more than {@link #NO_FILLET}.
   */
  public double bound(Region region, double distance) {
    double d = Math.abs(distance);
    double theta = 0;
    Edges edges = Edges.of(region);
    for (int i = 0; i < edges.count(); i++) {
      Edge before = edges.place(i).edge();
      Edge after = edges.place(edges.place(i).after()).edge();
      double turn = Math.abs(Math.IEEEremainder(after.heading(0) - before.heading(1), 2 * Math.PI));
      // In the flat copy half a chord's turn on either side comes off a corner or is added to it,
      // and the simplifier may first have made longer chords.
      double height = tolerance + SIMPLIFY_FACTOR * d;
      double chords = (chordTurn(before, height) + chordTurn(after, height)) / 2;
      theta = Math.max(theta, turn - chords < NO_FILLET ? turn + chords : 0);
      theta = Math.max(theta, chordTurn(before, tolerance));
    }
    theta = Math.min(theta, NO_FILLET);
    return 2 * tolerance + SIMPLIFY_FACTOR * d + d * theta * theta / 2;
  }

  /**
   * The most by which the areas of two offsets may differ whose edges lie between the distances d −
   * bound and d + bound. The curve at distance t is at most as long as the input's edges plus t
   * times all their turning, so the band between holds at most twice the bound times that.
   */
  static double areaBound(Region region, double distance, double bound) {
    Edges edges = Edges.of(region);
    double turning = 0;
    for (int i = 0; i < edges.count(); i++) {
      Edges.Place place = edges.place(i);
      double corner = edges.place(place.after()).edge().heading(0) - place.edge().heading(1);
      turning += Math.abs(Math.IEEEremainder(corner, 2 * Math.PI));
      turning += place.edge().isArc() ? Math.abs(place.edge().sweep()) : 0;
    }
    return 2 * bound * (edges.length() + (Math.abs(distance) + bound) * turning);
  }

  /** The flat copy with points taken out that lie within {@code tolerance} mm of the rest. */
  public static Geometry thinned(Geometry flat, double tolerance) {
    return DouglasPeuckerSimplifier.simplify(flat, tolerance);
  }

  private static double chordTurn(Edge edge, double height) {
    return edge.isArc() ? step(edge.r(), height) : 0;
  }

  /** The polygon's rings as edges. */
  public static Edges edges(Geometry geometry) {
    List<List<Edge>> loops = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        loops.add(edges(polygon.getExteriorRing()));
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          loops.add(edges(polygon.getInteriorRingN(k)));
        }
      }
    }
    return Edges.ofLoops(loops);
  }

  // JTS runs outer rings clockwise; turned round, the inside is on the left as in an outline.
  private static List<Edge> edges(LinearRing ring) {
    Coordinate[] points = ring.reverse().getCoordinates();
    List<Edge> edges = new ArrayList<>(points.length);
    for (int i = 1; i < points.length; i++) {
      if (!points[i - 1].equals2D(points[i])) {
        edges.add(Edge.straight(points[i - 1].x, points[i - 1].y, points[i].x, points[i].y));
      }
    }
    return edges;
  }
}
