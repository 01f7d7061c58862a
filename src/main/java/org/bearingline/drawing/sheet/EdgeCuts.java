package org.bearingline.drawing.sheet;

import java.util.Arrays;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Line;
import org.bearingline.outline.Primitive;

/**
 * Where a primitive crosses the edges of a grid's cells, exactly: a line by proportion, an arc by
 * the angles at which its circle meets the edge. Between two neighbouring cuts the same pages show
 * every point.
 */
final class EdgeCuts {

  private final Primitive primitive;
  private double[] shares = new double[16];
  private int count;

  private EdgeCuts(Primitive primitive) {
    this.primitive = primitive;
  }

  /** The shares of all cuts with 0 and 1, in rising order; some may be equal. */
  static double[] of(Primitive primitive, Grid grid) {
    EdgeCuts cuts = new EdgeCuts(primitive);
    cuts.add(0);
    cuts.add(1);
    Bounds box = primitive.bounds();
    double x = grid.originX() + Grid.EDGE;
    double y = grid.originY() + Grid.EDGE;
    cuts.edges(true, x, grid.stepX(), box.minX(), box.maxX());
    cuts.edges(true, x + grid.sureWidth(), grid.stepX(), box.minX(), box.maxX());
    cuts.edges(false, y, grid.stepY(), box.minY(), box.maxY());
    cuts.edges(false, y + grid.sureHeight(), grid.stepY(), box.minY(), box.maxY());
    double[] sorted = Arrays.copyOf(cuts.shares, cuts.count);
    Arrays.sort(sorted);
    return sorted;
  }

  private void edges(boolean upright, double origin, double step, double from, double to) {
    for (int i = (int) Math.ceil((from - origin) / step); origin + i * step <= to; i++) {
      double at = origin + i * step;
      primitive.match(line -> cutLine(line, upright, at), arc -> cutArc(arc, upright, at));
    }
  }

  private EdgeCuts cutLine(Line line, boolean upright, double at) {
    double from = upright ? line.start().x() : line.start().y();
    double to = upright ? line.end().x() : line.end().y();
    if (from != to) {
      keep((at - from) / (to - from));
    }
    return this;
  }

  private EdgeCuts cutArc(Arc arc, boolean upright, double at) {
    double middle = upright ? arc.center().x() : arc.center().y();
    double reach = (at - middle) / arc.radius();
    if (Math.abs(reach) >= 1) {
      return this;
    }
    double half = Math.toDegrees(Math.acos(reach));
    double base = upright ? 0 : 90;
    keep(share(arc, base + half));
    keep(share(arc, base - half));
    return this;
  }

  private static double share(Arc arc, double degrees) {
    double turn = degrees - arc.startDegrees();
    return Degrees.normalised(arc.sweep() > 0 ? turn : -turn) / Math.abs(arc.sweep());
  }

  private void keep(double share) {
    if (share > 0 && share < 1) {
      add(share);
    }
  }

  private void add(double share) {
    if (count == shares.length) {
      shares = Arrays.copyOf(shares, 2 * count);
    }
    shares[count++] = share;
  }
}
