package org.bearingline.outline.offset;

import org.bearingline.outline.Region;
import org.bearingline.outline.topology.Crossings;
import org.bearingline.outline.topology.Cuts;
import org.bearingline.outline.topology.Pieces;

/**
 * One overlay: both edges are cut at their meetings, each part is kept or dropped by where its
 * middle lies in the other region, and the kept parts are stitched.
 */
final class OverlayStep {

  /** Parts of the two edges are one where they lie within this many tolerances of each other. */
  private static final double ON = 2;

  private final Overlay.Operation operation;
  private final Frame frame;
  private final LoopSet a;
  private final LoopSet b;
  private final Nearness nearA;
  private final Nearness nearB;
  private final Inside inA;
  private final Inside inB;
  private final Pieces kept;
  private final double[] middle = new double[2];

  OverlayStep(Overlay.Operation operation, Region a, Region b, Frame frame) {
    this.operation = operation;
    this.frame = frame;
    this.a = LoopSet.of(a, false, frame);
    this.b = LoopSet.of(b, false, frame);
    nearA = new Nearness(this.a.pieces);
    nearB = new Nearness(this.b.pieces);
    inA = new Inside(this.a.pieces, nearA.index(), false);
    inB = new Inside(this.b.pieces, nearB.index(), false);
    kept = new Pieces(this.a.pieces.size() + this.b.pieces.size());
  }

  Region run() throws Unproven {
    double tolerance = frame.tolerance();
    int countA = a.pieces.size();
    Pieces all = new Pieces(countA + b.pieces.size());
    for (int k = 0; k < countA; k++) {
      all.add(a.pieces, k, k);
    }
    for (int k = 0; k < b.pieces.size(); k++) {
      all.add(b.pieces, k, countA + k);
    }
    Crossings crossings = new Crossings(all, tolerance);
    for (int k = 0; k < countA; k++) {
      int count = nearB.index().queryAround(a.pieces, k, tolerance);
      int[] hits = nearB.index().hits();
      for (int h = 0; h < count; h++) {
        crossings.cross(k, countA + hits[h]);
      }
    }
    Pieces parts = new Pieces(16);
    for (int k = 0; k < all.size(); k++) {
      sort(all, crossings.cuts(), k, k < countA, parts);
    }
    Stitching.Stitched stitched = Stitching.of(kept, tolerance);
    LoopSet out = Merging.of(stitched.loops(), tolerance).withoutCrumbs(tolerance);
    checkLeftOver(stitched.leftOver(), new Nearness(out.pieces));
    return Regions.of(out, false, frame);
  }

  private void sort(Pieces all, Cuts cuts, int k, boolean ofA, Pieces parts) {
    parts.truncate(0);
    cuts.parts(k, frame.tolerance(), parts, k);
    Nearness other = ofA ? nearB : nearA;
    Inside inOther = ofA ? inB : inA;
    boolean wantInside =
        operation == Overlay.Operation.INTERSECTION
            || (operation == Overlay.Operation.DIFFERENCE && !ofA);
    double on = ON * frame.tolerance();
    for (int i = 0; i < parts.size(); i++) {
      parts.middle(i, middle);
      double x = middle[0];
      double y = middle[1];
      if (other.within(x, y, on) <= on) {
        boolean sameSense = sameSense(parts, i, ofA ? b.pieces : a.pieces, other.nearest(), x, y);
        if (ofA && sameSense == (operation != Overlay.Operation.DIFFERENCE)) {
          kept.add(parts, i, k);
        }
      } else if (inOther.contains(x, y) == wantInside) {
        if (operation == Overlay.Operation.DIFFERENCE && !ofA) {
          kept.addReversed(parts, i, k);
        } else {
          kept.add(parts, i, k);
        }
      }
    }
  }

  private static boolean sameSense(Pieces p, int i, Pieces q, int j, double x, double y) {
    return directionX(p, i, y) * directionX(q, j, y) + directionY(p, i, x) * directionY(q, j, x)
        > 0;
  }

  private static double directionX(Pieces p, int k, double y) {
    return p.turn[k] == 0 ? p.x1[k] - p.x0[k] : (p.cy[k] - y) * p.turn[k];
  }

  private static double directionY(Pieces p, int k, double x) {
    return p.turn[k] == 0 ? p.y1[k] - p.y0[k] : (x - p.cx[k]) * p.turn[k];
  }

  // Parts without a loop may remain only where both edges run together, or on the result itself.
  private void checkLeftOver(Pieces leftOver, Nearness result) throws Unproven {
    double slack = 20 * frame.tolerance();
    for (int k = 0; k < leftOver.size(); k++) {
      leftOver.middle(k, middle);
      double x = middle[0];
      double y = middle[1];
      boolean onBoth = nearA.within(x, y, slack) <= slack && nearB.within(x, y, slack) <= slack;
      if (!onBoth && result.within(x, y, slack) > slack) {
        throw new Unproven("part of the edge joins no loop", x, y, frame);
      }
    }
  }
}
