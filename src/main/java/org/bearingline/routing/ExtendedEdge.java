package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/**
 * P⁺: the part's edge with each routed stretch run on, tangentially, past the ends where it meets a
 * sawn edge, and closed behind the sawn edges. Offsetting P⁺ instead of P lets the follower come
 * onto the template before the cutter meets wood, and keeps the corners at the ends of the work
 * crisp.
 *
 * @param loop the closed edge, wood on the left
 * @param stretches what each primitive of the loop is
 * @param ends where routed edges meet sawn ones and the edge runs on
 * @param runOut mm it runs on; less than asked for where the part itself was in the way
 */
record ExtendedEdge(Loop loop, List<Stretch> stretches, List<StockEnd> ends, double runOut) {

  /** Shares of the wanted run-out that are tried in turn until the part is not in the way. */
  private static final double[] SHARES = {1, 0.5, 0.25, 0.1};

  ExtendedEdge {
    stretches = List.copyOf(stretches);
    ends = List.copyOf(ends);
  }

  /**
   * The outer edge run on.
   *
   * @param contour counter-clockwise with at least one routed primitive
   * @param runOut mm past the ends
   * @param margin mm behind sawn edges
   */
  static ExtendedEdge ofOutside(Contour contour, double runOut, double margin) {
    return of(contour, runOut, (chain, share) -> chain.behind(runOut * share, margin * share));
  }

  /** A cavity's edge run on; a sawn stretch of it is the open end of a slot. */
  static ExtendedEdge ofCavity(Contour contour, double runOut) {
    return of(contour, runOut, (chain, share) -> chain.openEnd(runOut * share));
  }

  private interface Closing {
    SawnChain.Closed close(SawnChain chain, double share);
  }

  private static ExtendedEdge of(Contour contour, double runOut, Closing closing) {
    int first = firstRouted(contour);
    if (first < 0) {
      return new ExtendedEdge(
          contour.loop(),
          Collections.nCopies(contour.kinds().size(), Stretch.ROUTED),
          List.of(),
          runOut);
    }
    for (double share : SHARES) {
      ExtendedEdge extended = runOn(contour, first, runOut * share, closing, share);
      if (ClearRun.isClear(extended, contour)) {
        return extended;
      }
    }
    return notRunOn(contour);
  }

  private static ExtendedEdge runOn(
      Contour contour, int first, double runOut, Closing closing, double share) {
    List<Primitive> edge = contour.loop().primitives();
    List<Primitive> primitives = new ArrayList<>();
    List<Stretch> stretches = new ArrayList<>();
    List<StockEnd> ends = new ArrayList<>();
    int n = edge.size();
    int i = 0;
    while (i < n) {
      int here = (first + i) % n;
      if (contour.kinds().get(here) == EdgeKind.ROUTED) {
        primitives.add(edge.get(here));
        stretches.add(Stretch.ROUTED);
        i++;
        continue;
      }
      Primitive before = edge.get((here + n - 1) % n);
      List<Primitive> sawn = new ArrayList<>();
      while (i < n && contour.kinds().get((first + i) % n) == EdgeKind.SAWN) {
        sawn.add(edge.get((first + i) % n));
        i++;
      }
      Primitive after = edge.get((first + i) % n);
      SawnChain.Closed closed = closing.close(new SawnChain(before, sawn, after), share);
      primitives.addAll(closed.primitives());
      stretches.addAll(closed.stretches());
      ends.addAll(closed.ends());
    }
    return new ExtendedEdge(new Loop(primitives), stretches, ends, runOut);
  }

  private static ExtendedEdge notRunOn(Contour contour) {
    List<Stretch> stretches = new ArrayList<>();
    for (EdgeKind kind : contour.kinds()) {
      stretches.add(kind == EdgeKind.ROUTED ? Stretch.ROUTED : Stretch.BACKING);
    }
    return new ExtendedEdge(contour.loop(), stretches, List.of(), 0);
  }

  /** The first routed primitive after a sawn one, or −1 where all are routed. */
  private static int firstRouted(Contour contour) {
    int n = contour.kinds().size();
    for (int i = 0; i < n; i++) {
      if (contour.kinds().get(i) == EdgeKind.ROUTED
          && contour.kinds().get((i + n - 1) % n) == EdgeKind.SAWN) {
        return i;
      }
    }
    return -1;
  }
}
