package org.bearingline.routing;

import java.util.List;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;

/**
 * ∂((P ⊕ D(R)) ⊖ D(r)): the floor of the groove that a slot cutter of radius r cuts along the edge
 * of P with its bearing of radius R riding that edge. It equals P closed by D(R), then eroded by
 * D(r − R): r − R deep wherever the bearing follows the edge, less in every hollow tighter than R.
 *
 * @param tool what cuts it
 * @param edge the edge's name
 * @param depthWanted mm, r − R less what the template stands back
 * @param leastDepth mm, measured from the edge to the floor; {@code depthWanted} where the bearing
 *     follows everywhere
 * @param runs the grooved stretches
 * @param shallow places where the bearing cannot follow, numbered from the left
 * @param tolerance mm to which the floor is known
 * @param cautions sentences for the maker
 */
public record Groove(
    SlotCutter tool,
    String edge,
    double depthWanted,
    double leastDepth,
    List<GrooveRun> runs,
    List<Shallow> shallow,
    double tolerance,
    List<String> cautions) {

  public Groove {
    runs = List.copyOf(runs);
    shallow = List.copyOf(shallow);
    cautions = List.copyOf(cautions);
  }

  /**
   * A place where the groove is less deep than wanted.
   *
   * @param number from 1
   * @param piece wood that stays between the wanted floor and the real one
   * @param at where the edge lies nearest to the floor
   * @param lostDepth mm
   * @param depthLeft mm, more than 0
   * @param insideRadius of the hollow, mm, 0 where it is sharp: the largest bearing that follows it
   */
  public record Shallow(
      int number,
      Outline piece,
      Point at,
      double lostDepth,
      double depthLeft,
      double insideRadius) {}

  /** mm of the slot's width, along the thickness of the work. */
  public double thickness() {
    return tool.thickness();
  }

  /** Whether all it runs along is straight, so that a fence may guide the work. */
  public boolean isStraight() {
    return runs.stream()
        .allMatch(
            run ->
                run.edge().primitives().size() == 1
                    && run.edge().primitives().get(0).curvature() == 0);
  }

  /**
   * The groove with the bearing on the part's own routed edge.
   *
   * @param units for the sentences
   * @throws org.bearingline.problem.Problem where the edge or side has nothing routed, the stops
   *     leave no groove, the groove cuts through the part, or a hollow is so tight that the cutter
   *     does not reach its edge at all
   */
  public static Groove along(Part part, SlotCutter tool, GrooveExtent extent, Units units) {
    return GrooveMaker.make(part, tool, extent, 0, units);
  }

  /**
   * The groove with the bearing on a template whose working edge is {@code templateOffset} mm to
   * the waste side of the part's edge, negative for one that stands back; see {@link
   * Template#offset}. The groove is shallower or deeper by that.
   */
  public static Groove along(
      Part part, SlotCutter tool, GrooveExtent extent, double templateOffset, Units units) {
    return GrooveMaker.make(part, tool, extent, templateOffset, units);
  }
}
