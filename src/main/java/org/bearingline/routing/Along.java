package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The stretches of an offset edge that run beside routed edges and their run-out; what runs behind
 * sawn edges is left out.
 */
final class Along {

  /** Nearer than this, in mm, two distances are one. */
  private static final double SAME = 1e-6;

  /** A share nearer than this to an end of a piece cuts nothing off. */
  private static final double WHOLE = 1e-9;

  private Along() {}

  /**
   * Paths beside the followed stretches, in the sense of the loops.
   *
   * @param loops of the offset
   * @param edge it is an offset of
   * @param distance mm of the offset, 0 or more
   */
  static List<Path> followed(List<Loop> loops, ExtendedEdge edge, double distance) {
    List<Path> paths = new ArrayList<>();
    List<Point> changes = changes(edge);
    for (Loop loop : loops) {
      collect(changes.isEmpty() ? loop.primitives() : cut(loop, changes, distance), edge, paths);
    }
    return paths;
  }

  /** Where followed and other stretches meet. */
  private static List<Point> changes(ExtendedEdge edge) {
    List<Point> changes = new ArrayList<>();
    int n = edge.loop().size();
    for (int i = 0; i < n; i++) {
      if (edge.stretches().get(i).isFollowed() != edge.stretches().get((i + 1) % n).isFollowed()) {
        changes.add(edge.loop().primitives().get(i).end());
      }
    }
    return changes;
  }

  private static List<Primitive> cut(Loop loop, List<Point> changes, double distance) {
    List<Primitive> pieces = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      List<Double> shares = new ArrayList<>();
      for (Point change : changes) {
        double share = piece.nearestShare(change);
        boolean beside = Math.abs(piece.pointAt(share).distanceTo(change) - distance) < SAME;
        if (beside && share > WHOLE && share < 1 - WHOLE) {
          shares.add(share);
        }
      }
      shares.sort(null);
      double from = 0;
      for (double share : shares) {
        if (share > from + WHOLE) {
          pieces.add(piece.part(from, share));
          from = share;
        }
      }
      pieces.add(from == 0 ? piece : piece.part(from, 1));
    }
    return pieces;
  }

  private static void collect(List<Primitive> pieces, ExtendedEdge edge, List<Path> paths) {
    int n = pieces.size();
    boolean[] followed = new boolean[n];
    int first = -1;
    for (int i = 0; i < n; i++) {
      followed[i] = isFollowed(pieces.get(i), edge);
      if (!followed[i]) {
        first = i;
      }
    }
    if (first < 0) {
      paths.add(new Path(pieces));
      return;
    }
    List<Primitive> run = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      int here = (first + i) % n;
      if (followed[here]) {
        run.add(pieces.get(here));
      } else if (!run.isEmpty()) {
        paths.add(new Path(run));
        run = new ArrayList<>();
      }
    }
  }

  /** Whether a piece lies nearer to followed stretches; one about a joint of both does not. */
  private static boolean isFollowed(Primitive piece, ExtendedEdge edge) {
    Point middle = piece.middle();
    double near = Double.POSITIVE_INFINITY;
    double other = Double.POSITIVE_INFINITY;
    for (int i = 0; i < edge.loop().size(); i++) {
      double distance = edge.loop().primitives().get(i).distanceTo(middle);
      if (edge.stretches().get(i).isFollowed()) {
        near = Math.min(near, distance);
      } else {
        other = Math.min(other, distance);
      }
    }
    return near < other - SAME;
  }
}
