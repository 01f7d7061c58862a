package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.OffsetResult;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What a cutter makes of one edge.
 *
 * <p>Outside edge: R ≤ r gives A = P⁺ closed by D(r); R &gt; r gives A = (P⁺ opened by D(R − r))
 * closed by D(r). Cavity C, whose waste is C itself: the same with opening and closing exchanged.
 * Both follow from A = (T ⊕ D(R)) ⊖ D(r) with the T that asks for P.
 *
 * @param left A \ P within the stock
 * @param over P \ A within the stock
 * @param cutEdges the edges of A
 * @param tolerance mm
 * @param cautions of the offsets
 */
record EdgeCut(
    Region left, Region over, List<Loop> cutEdges, double tolerance, List<String> cautions) {

  /**
   * A bit exactly as wide as a slot enters it, but in figures the two walls meet in a line of no
   * width. So where wood is left, the same is worked with a radius smaller by this, in mm, and
   * taken where it makes a difference that no smooth change can: far below what a shop can see.
   */
  private static final double JUST_FITS = 1e-5;

  /** A smooth change of the leftover under {@link #JUST_FITS} stays far below this; mm². */
  private static final double SMOOTH_CHANGE = 0.01;

  /** Growth of an edge that is told apart from a neighbour only so, mm. */
  private static final double HAIR = 1e-5;

  static EdgeCut of(RoutedEdge edge, Cutter cutter, Follower follower) {
    EdgeCut full = worked(edge, cutter.radius(), follower.radius());
    if (full.left().isEmpty()) {
      return full;
    }
    EdgeCut slim = worked(edge, cutter.radius() - JUST_FITS, follower.radius() - JUST_FITS);
    boolean justFits = full.left().area() - slim.left().area() > SMOOTH_CHANGE;
    EdgeCut taken = justFits ? slim : full;
    if (!edge.isOutside() && taken.cutEdges().isEmpty()) {
      String sentence =
          "the bit is wider than this opening and cannot enter it; choose a smaller bit";
      // The edge is where it shows, the bit is what heals it.
      throw new Problem(
          Place.field(edge.name()), sentence, new Problem(Place.option("--bit"), sentence));
    }
    return taken;
  }

  private static EdgeCut worked(RoutedEdge edge, double cutter, double follower) {
    Work work = new Work();
    Region designed = edge.region();
    double wider = follower - cutter;
    boolean outside = edge.isOutside();
    Region asked = designed;
    if (wider > 0) {
      asked =
          work.take(outside ? Morphology.open(designed, wider) : Morphology.close(designed, wider));
    }
    Region made =
        work.take(outside ? Morphology.close(asked, cutter) : Morphology.open(asked, cutter));
    Region left = outside ? work.without(made, designed) : work.without(designed, made);
    Region over = Region.EMPTY;
    if (wider > 0) {
      over =
          outside
              ? work.without(Region.of(Outline.of(edge.contour().loop())), made)
              : withoutAir(work.without(made, designed), edge.run(), cutter);
    }
    return new EdgeCut(
        withoutAir(left, edge.run(), cutter), over, made.loops(), work.tolerance, work.cautions);
  }

  /** Takes off what lies beyond sawn edges, where there is no wood. */
  private static Region withoutAir(Region pieces, ExtendedEdge edge, double cutter) {
    Region rest = pieces;
    for (StockEnd end : edge.ends()) {
      if (rest.isEmpty()) {
        return rest;
      }
      Outline air = end.air(edge.runOut() + 8 * cutter);
      if (air.bounds().intersects(rest.bounds())) {
        rest = Overlay.difference(rest, Region.of(air));
      }
    }
    return rest;
  }

  /** Gathers what the offsets say of their truth. */
  private static final class Work {
    private final List<String> cautions = new ArrayList<>();
    private double tolerance;

    /**
     * a without b. Along a noisy outline the two edges share thousands of stretches and part by
     * less than can be told; there b grown by a hair is taken off instead.
     */
    Region without(Region a, Region b) {
      try {
        return Overlay.difference(a, b);
      } catch (Problem tooFine) {
        tolerance = Math.max(tolerance, HAIR);
        return Overlay.difference(a, take(Morphology.dilate(b, HAIR)));
      }
    }

    Region take(OffsetResult result) {
      tolerance = Math.max(tolerance, result.tolerance());
      result.caution().ifPresent(cautions::add);
      return result.region();
    }
  }
}
