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
    if (changes.isEmpty()) {
      for (Loop loop : loops) {
        paths.add(Path.of(loop));
      }
      return paths;
    }
    NearestEdge followed = nearest(edge, true);
    NearestEdge other = nearest(edge, false);
    for (Loop loop : loops) {
      collect(cut(loop, changes, distance), followed, other, paths);
    }
    return paths;
  }

  private static NearestEdge nearest(ExtendedEdge edge, boolean followed) {
    List<Primitive> pieces = new ArrayList<>();
    for (int i = 0; i < edge.loop().size(); i++) {
      if (edge.stretches().get(i).isFollowed() == followed) {
        pieces.add(edge.loop().primitives().get(i));
      }
    }
    return new NearestEdge(pieces);
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

  private static void collect(
      List<Primitive> pieces, NearestEdge near, NearestEdge other, List<Path> paths) {
    int n = pieces.size();
    boolean[] followed = new boolean[n];
    int first = -1;
    for (int i = 0; i < n; i++) {
      // A piece about a joint of both kinds is as near to either, and not followed.
      Point middle = pieces.get(i).middle();
      followed[i] = near.distanceTo(middle) < other.distanceTo(middle) - SAME;
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
}
