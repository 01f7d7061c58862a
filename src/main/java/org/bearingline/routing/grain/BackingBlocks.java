package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/**
 * Finds the outside corners at which end grain leaves the cut: joints of an edge where the cutter
 * comes along end grain and the edge turns towards the wood, so that the last fibres have waste
 * before them and nothing behind.
 */
final class BackingBlocks {

  /**
   * A turn smaller than this, in degrees, leaves wood behind the last fibres: common practice. A
   * smooth joint turns by nothing.
   */
  private static final double CORNER = 30;

  private final GrainSettings settings;
  private final Approach approach;
  private final List<BackingBlock> blocks = new ArrayList<>();

  private final int numberedBefore;

  private BackingBlocks(GrainSettings settings, Approach approach, int numberedBefore) {
    this.settings = settings;
    this.approach = approach;
    this.numberedBefore = numberedBefore;
  }

  /** The blocks of these edges, numbered on from those found before. */
  static List<BackingBlock> of(
      List<GrainEdge> edges, GrainSettings settings, Approach approach, int numberedBefore) {
    BackingBlocks found = new BackingBlocks(settings, approach, numberedBefore);
    for (GrainEdge edge : edges) {
      found.along(edge);
    }
    return found.blocks;
  }

  private void along(GrainEdge edge) {
    boolean left = approach.isWoodOnLeft();
    Contour contour = left ? edge.contour() : edge.contour().reversed();
    Lean lean = new Lean(settings, left);
    int n = contour.loop().size();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      Primitive here = contour.loop().primitives().get(i);
      Primitive after = contour.loop().primitives().get(next);
      boolean leavesEndGrain =
          contour.kinds().get(i) == EdgeKind.ROUTED
              && lean.classAt(here, 1) == GrainClass.END_GRAIN
              && turnTowardsWood(here, after, left) >= CORNER;
      if (leavesEndGrain) {
        boolean clearedLater =
            contour.kinds().get(next) == EdgeKind.ROUTED
                && lean.classAt(after, 0) != GrainClass.END_GRAIN;
        add(edge.name(), here.end(), here.tangentAt(1), clearedLater);
      }
    }
  }

  private static double turnTowardsWood(Primitive here, Primitive after, boolean woodOnLeft) {
    Point in = here.tangentAt(1);
    Point out = after.tangentAt(0);
    double left = Degrees.of(new Point(in.dot(out), in.cross(out)));
    return woodOnLeft ? left : -left;
  }

  private void add(String edge, Point at, Point travel, boolean clearedLater) {
    int number = numberedBefore + blocks.size() + 1;
    String sentence =
        "Backing block "
            + number
            + ": hold scrap tight against this corner of the "
            + edge
            + ", where the cutter leaves the end grain"
            + (clearedLater
                ? "; a small break-out goes when the next edge is routed."
                : "; no later cut takes a break-out away.");
    blocks.add(new BackingBlock(number, edge, at, travel, clearedLater, sentence));
  }
}
