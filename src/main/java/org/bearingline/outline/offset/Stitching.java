package org.bearingline.outline.offset;

import java.util.Arrays;
import org.bearingline.outline.topology.Pieces;

/**
 * Joins pieces end to start into closed loops. Two pieces on each other in the same direction count
 * once, in opposite directions not at all; pieces that lead nowhere are left over.
 */
final class Stitching {

  /** Ends are joined over this many tolerances: each may be off by one from a shared crossing. */
  private static final double REACH = 3;

  private final Pieces p;
  private final double reach;
  private final Nodes nodes;
  private final int[] from;
  private final int[] to;
  private final boolean[] gone;
  private final int[] firstOut;
  private final int[] nextOut;
  private final double[] incoming = new double[2];
  private final double[] outgoing = new double[2];
  private final double[] middle = new double[2];
  private final double[] other = new double[2];
  private final LoopSet out;
  private final boolean[] inLoop;

  private Stitching(Pieces pieces, double tolerance) {
    p = pieces;
    reach = REACH * tolerance;
    int n = p.size();
    nodes = new Nodes(2 * n, reach);
    from = new int[n];
    to = new int[n];
    gone = new boolean[n];
    inLoop = new boolean[n];
    nextOut = new int[n];
    for (int k = 0; k < n; k++) {
      from[k] = nodes.at(p.x0[k], p.y0[k]);
      to[k] = p.full[k] ? from[k] : nodes.at(p.x1[k], p.y1[k]);
    }
    firstOut = new int[nodes.size()];
    Arrays.fill(firstOut, -1);
    for (int k = n - 1; k >= 0; k--) {
      nextOut[k] = firstOut[from[k]];
      firstOut[from[k]] = k;
    }
    out = new LoopSet(n);
  }

  /** Loops and what was left over. */
  record Stitched(LoopSet loops, Pieces leftOver) {}

  static Stitched of(Pieces pieces, double tolerance) {
    Stitching work = new Stitching(pieces, tolerance);
    work.dropDoubles();
    boolean[] doubles = work.gone.clone();
    work.pruneDeadEnds();
    work.walkAll();
    Pieces leftOver = new Pieces(8);
    for (int k = 0; k < pieces.size(); k++) {
      if (!doubles[k] && !work.inLoop[k]) {
        leftOver.add(pieces, k, pieces.source[k]);
      }
    }
    return new Stitched(work.out, leftOver);
  }

  private void dropDoubles() {
    for (int k = 0; k < p.size(); k++) {
      if (gone[k]) {
        continue;
      }
      if (from[k] == to[k] && !p.full[k] && p.length(k) <= 2 * reach) {
        gone[k] = true;
        continue;
      }
      p.middle(k, middle);
      for (int j = firstOut[from[k]]; j >= 0 && !gone[k]; j = nextOut[j]) {
        if (j > k && !gone[j] && to[j] == to[k] && sameCourse(k, j)) {
          gone[j] = true;
          gone[k] = p.full[k] && p.turn[j] != p.turn[k];
        }
      }
      for (int j = firstOut[to[k]]; j >= 0 && !gone[k]; j = nextOut[j]) {
        if (j != k && !gone[j] && to[j] == from[k] && sameCourse(k, j)) {
          gone[j] = true;
          gone[k] = true;
        }
      }
    }
  }

  // The middle of one lies on the other; the ends are known to be the same.
  private boolean sameCourse(int k, int j) {
    if (p.full[k] != p.full[j]) {
      return false;
    }
    p.middle(j, other);
    return p.distance(j, middle[0], middle[1]) <= reach
        && p.distance(k, other[0], other[1]) <= reach;
  }

  private void pruneDeadEnds() {
    int n = p.size();
    int[] outs = new int[nodes.size()];
    int[] ins = new int[nodes.size()];
    int[] firstIn = new int[nodes.size()];
    int[] nextIn = new int[n];
    Arrays.fill(firstIn, -1);
    for (int k = 0; k < n; k++) {
      if (!gone[k]) {
        outs[from[k]]++;
        ins[to[k]]++;
        nextIn[k] = firstIn[to[k]];
        firstIn[to[k]] = k;
      }
    }
    int[] stack = new int[n + 1];
    for (int start = 0; start < n; start++) {
      int depth = 0;
      stack[depth++] = start;
      while (depth > 0) {
        int k = stack[--depth];
        if (gone[k] || (outs[to[k]] > 0 && ins[from[k]] > 0)) {
          continue;
        }
        gone[k] = true;
        outs[from[k]]--;
        ins[to[k]]--;
        if (outs[from[k]] == 0) {
          for (int j = firstIn[from[k]]; j >= 0 && depth < n; j = nextIn[j]) {
            stack[depth++] = j;
          }
        }
        if (ins[to[k]] == 0) {
          for (int j = firstOut[to[k]]; j >= 0 && depth < n; j = nextOut[j]) {
            stack[depth++] = j;
          }
        }
      }
    }
  }

  private void walkAll() {
    int n = p.size();
    int[] path = new int[n];
    int[] placeOfNode = new int[nodes.size()];
    Arrays.fill(placeOfNode, -1);
    for (int start = 0; start < n; start++) {
      if (gone[start]) {
        continue;
      }
      int length = 0;
      int k = start;
      while (k >= 0) {
        gone[k] = true;
        placeOfNode[from[k]] = length;
        path[length++] = k;
        int node = to[k];
        int back = placeOfNode[node];
        if (back >= 0) {
          emit(path, back, length);
          for (int i = back; i < length; i++) {
            placeOfNode[from[path[i]]] = -1;
          }
          length = back;
          k = length == 0 ? -1 : leftmost(path[length - 1], node);
        } else {
          k = leftmost(k, node);
        }
        // A dead end: give up the last piece and try another way out of the node before.
        while (k < 0 && length > 0) {
          int last = path[--length];
          placeOfNode[from[last]] = -1;
          k = length == 0 ? -1 : leftmost(path[length - 1], from[last]);
        }
      }
    }
  }

  // The way out that turns most to the left, so that loops that touch in a point stay apart.
  private int leftmost(int in, int node) {
    int only = -1;
    int best = -1;
    double bestTurn = 0;
    for (int k = firstOut[node]; k >= 0; k = nextOut[k]) {
      if (gone[k]) {
        continue;
      }
      if (only < 0 && best < 0) {
        only = k;
        best = k;
        bestTurn = Double.NaN;
        continue;
      }
      if (Double.isNaN(bestTurn)) {
        bestTurn = turn(in, best);
      }
      double turn = turn(in, k);
      if (turn > bestTurn) {
        best = k;
        bestTurn = turn;
      }
    }
    return best;
  }

  // Grows with the angle turned to the left, from −180° to 180°; curvature decides between equals.
  private double turn(int in, int k) {
    p.tangent(in, true, incoming);
    p.tangent(k, false, outgoing);
    double angle =
        Math.atan2(
            incoming[0] * outgoing[1] - incoming[1] * outgoing[0],
            incoming[0] * outgoing[0] + incoming[1] * outgoing[1]);
    if (Math.PI - Math.abs(angle) < 1e-6) {
      // Straight back: left or right of the way in is told by the bend.
      angle = p.curvature(k) > -p.curvature(in) ? -Math.PI : Math.PI;
    }
    return angle + 1e-7 * Math.atan(p.curvature(k));
  }

  private void emit(int[] path, int begin, int end) {
    int first = out.pieces.size();
    for (int i = begin; i < end; i++) {
      int k = path[i];
      inLoop[k] = true;
      double sx = nodes.x(from[k]);
      double sy = nodes.y(from[k]);
      boolean whole = p.full[k] || (end - begin == 1 && p.turn[k] != 0);
      out.pieces.addPart(p, k, sx, sy, nodes.x(to[k]), nodes.y(to[k]), whole, p.source[k]);
    }
    out.close(first);
  }
}
