package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;

/** Finds the primitives of an edge that are nearest to a point, by an index. */
final class NearestEdge {

  /** The box round a point that is looked at first reaches this far, mm. */
  private static final double FIRST = 0.01;

  /** How much farther each next look reaches. */
  private static final double WIDER = 16;

  private final Pieces pieces;
  private final PieceIndex index;

  NearestEdge(List<Primitive> primitives) {
    pieces = new Pieces(primitives.size());
    for (int i = 0; i < primitives.size(); i++) {
      pieces.add(primitives.get(i), 0, 0, i);
    }
    index = new PieceIndex(pieces);
  }

  static NearestEdge of(List<Loop> loops) {
    List<Primitive> primitives = new ArrayList<>();
    for (Loop loop : loops) {
      primitives.addAll(loop.primitives());
    }
    return new NearestEdge(primitives);
  }

  /** Distance in mm; infinite where there is no edge. */
  double distanceTo(Point p) {
    if (pieces.size() == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double reach = FIRST;
    double least = within(p, reach);
    while (least > reach) {
      reach = Double.isInfinite(least) ? reach * WIDER : least;
      least = within(p, reach);
    }
    return least;
  }

  /** Whether an edge is no farther than {@code distance} mm. */
  boolean isWithin(Point p, double distance) {
    return within(p, distance) <= distance;
  }

  /** Numbers of the primitives no farther than {@code distance} mm, in no promised order. */
  int[] near(Point p, double distance) {
    int count = ask(p, distance);
    int[] found = new int[count];
    int kept = 0;
    for (int h = 0; h < count; h++) {
      int k = index.hits()[h];
      if (pieces.distance(k, p.x(), p.y()) <= distance) {
        found[kept++] = k;
      }
    }
    return Arrays.copyOf(found, kept);
  }

  private double within(Point p, double reach) {
    int count = ask(p, reach);
    int[] hits = index.hits();
    double least = Double.POSITIVE_INFINITY;
    for (int h = 0; h < count; h++) {
      least = Math.min(least, pieces.distance(hits[h], p.x(), p.y()));
    }
    return least;
  }

  private int ask(Point p, double reach) {
    return index.query(p.x() - reach, p.y() - reach, p.x() + reach, p.y() + reach);
  }
}
