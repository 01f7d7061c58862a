package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outside.StrokePen;

/** Draws an LWPOLYLINE, or a POLYLINE with its vertices: straight pieces and arcs by bulge. */
final class PolylineStrokes {

  /** Bits of group 70 of a polyline. */
  private static final int CLOSED = 1;

  private static final int SOLID = 8;

  static final int MESH = 16 | 64;

  /** Bit of group 70 of a vertex: it frames a spline and does not lie on the line. */
  private static final int FRAME = 16;

  /** An arc that rises no more than this above its chord, in units of the drawing, is straight. */
  private static final double FLAT = 1e-9;

  /**
   * A corner of the line.
   *
   * @param at in the entity's coordinates
   * @param bulge of the piece that begins here, tan(sweep / 4), positive to the left
   */
  private record Vertex(Point at, double bulge) {}

  private PolylineStrokes() {}

  static void draw(DxfEntity entity, StrokePen pen) {
    boolean isLight = entity.kind().equals("LWPOLYLINE");
    List<Vertex> vertices = isLight ? light(entity) : heavy(entity);
    if (vertices.size() < 2) {
      return;
    }
    pen.moveTo(vertices.get(0).at());
    for (int i = 1; i < vertices.size(); i++) {
      piece(vertices.get(i - 1), vertices.get(i).at(), pen);
    }
    if ((entity.flags(70) & CLOSED) != 0) {
      piece(vertices.get(vertices.size() - 1), vertices.get(0).at(), pen);
      pen.close();
    }
  }

  private static void piece(Vertex from, Point to, StrokePen pen) {
    double chord = from.at().distanceTo(to);
    double bulge = from.bulge();
    if (Math.abs(bulge) * chord / 2 <= FLAT) {
      if (chord > 0) {
        pen.lineTo(to);
      }
      return;
    }
    // Past this an arc is a full circle to the last bit, and its bulge a mistake.
    if (Math.abs(bulge) > 1e6) {
      pen.lineTo(to);
      return;
    }
    Arc arc = Arc.ofBulge(from.at(), to, bulge);
    pen.ellipseTo(
        arc.center(),
        new Point(arc.radius(), 0),
        new Point(0, arc.radius()),
        arc.startDegrees(),
        arc.sweep(),
        to);
  }

  private static List<Vertex> light(DxfEntity entity) {
    List<Vertex> vertices = new ArrayList<>();
    double x = Double.NaN;
    for (int i = 0; i < entity.count(); i++) {
      double value = entity.value(i);
      switch (entity.code(i)) {
        case 10 -> x = value;
        case 20 -> {
          if (!Double.isNaN(x)) {
            vertices.add(new Vertex(new Point(x, value), 0));
            x = Double.NaN;
          }
        }
        case 42 -> {
          if (!vertices.isEmpty()) {
            int last = vertices.size() - 1;
            vertices.set(last, new Vertex(vertices.get(last).at(), value));
          }
        }
        default -> {
          // Widths and heights do not move the line.
        }
      }
    }
    return vertices;
  }

  private static List<Vertex> heavy(DxfEntity entity) {
    boolean isSolid = (entity.flags(70) & SOLID) != 0;
    List<Vertex> vertices = new ArrayList<>();
    for (DxfEntity vertex : entity.vertices()) {
      if ((vertex.flags(70) & FRAME) == 0 || isSolid) {
        double bulge = isSolid ? 0 : vertex.number(42, 0);
        vertices.add(new Vertex(DxfPoints.one(vertex, 10, 20), bulge));
      }
    }
    return vertices;
  }
}
