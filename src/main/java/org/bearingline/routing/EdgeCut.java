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

  static EdgeCut of(RoutedEdge edge, Cutter cutter, Follower follower) {
    return edge.isOutside() ? ofOutside(edge, cutter, follower) : ofCavity(edge, cutter, follower);
  }

  private static EdgeCut ofOutside(RoutedEdge edge, Cutter cutter, Follower follower) {
    Work work = new Work();
    Region designed = edge.region();
    double wider = follower.radius() - cutter.radius();
    Region asked = wider > 0 ? work.take(Morphology.open(designed, wider)) : designed;
    Region made = work.take(Morphology.close(asked, cutter.radius()));
    Region left = withoutAir(Overlay.difference(made, designed), edge.run(), cutter);
    Region over =
        wider > 0
            ? Overlay.difference(Region.of(Outline.of(edge.contour().loop())), made)
            : Region.EMPTY;
    return new EdgeCut(left, over, made.loops(), work.tolerance, work.cautions);
  }

  private static EdgeCut ofCavity(RoutedEdge edge, Cutter cutter, Follower follower) {
    Work work = new Work();
    Region designed = edge.region();
    double wider = follower.radius() - cutter.radius();
    Region asked = wider > 0 ? work.take(Morphology.close(designed, wider)) : designed;
    Region cut = work.take(Morphology.open(asked, cutter.radius()));
    if (cut.isEmpty()) {
      throw new Problem(
          Place.field(edge.name()),
          "the bit is wider than this opening and cannot enter it; choose a smaller bit");
    }
    Region left = withoutAir(Overlay.difference(designed, cut), edge.run(), cutter);
    Region over =
        wider > 0
            ? withoutAir(Overlay.difference(cut, designed), edge.run(), cutter)
            : Region.EMPTY;
    return new EdgeCut(left, over, cut.loops(), work.tolerance, work.cautions);
  }

  /** Takes off what lies beyond sawn edges, where there is no wood. */
  private static Region withoutAir(Region pieces, ExtendedEdge edge, Cutter cutter) {
    Region rest = pieces;
    for (StockEnd end : edge.ends()) {
      if (rest.isEmpty()) {
        return rest;
      }
      Outline air = end.air(edge.runOut() + 4 * cutter.diameter());
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

    Region take(OffsetResult result) {
      tolerance = Math.max(tolerance, result.tolerance());
      result.caution().ifPresent(cautions::add);
      return result.region();
    }
  }
}
