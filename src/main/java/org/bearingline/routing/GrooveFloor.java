package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.OffsetResult;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The regions of a groove along one run. Outside edge: the centre keeps out of P ⊕ D(R) and what
 * lies beyond the floor is (P ⊕ D(R)) ⊖ D(r). Opening C: the centre keeps to C ⊖ D(R), and the
 * grooved opening is (C ⊖ D(R)) ⊕ D(r). Where the bearing does not get through a neck, what lies
 * behind it stays as it is.
 */
final class GrooveFloor {

  private final RoutedEdge edge;
  private final SlotCutter tool;
  private final double templateOffset;
  private final Units units;
  private final List<String> cautions = new ArrayList<>();
  private double tolerance;
  private Region centre;
  private Region floor;

  private GrooveFloor(RoutedEdge edge, SlotCutter tool, double templateOffset, Units units) {
    this.units = units;
    this.edge = edge;
    this.tool = tool;
    this.templateOffset = templateOffset;
  }

  static GrooveFloor of(
      GroovedRuns.Run run, String name, SlotCutter tool, double templateOffset, Units units) {
    double around = 2 * tool.cutter().diameter() + Math.abs(templateOffset);
    ExtendedEdge extended =
        run.cavity().isPresent()
            ? ExtendedEdge.ofCavity(run.contour(), around)
            : ExtendedEdge.ofOutside(run.contour(), around, around);
    RoutedEdge edge = new RoutedEdge(name, run.contour(), run.cavity(), extended);
    GrooveFloor floor = new GrooveFloor(edge, tool, templateOffset, units);
    floor.work();
    return floor;
  }

  private void work() {
    Region ridden = grown(edge.region(), edge.isOutside() ? templateOffset : -templateOffset);
    if (edge.isOutside()) {
      centre = withoutHoles(take(Morphology.dilate(ridden, tool.bearing().radius())));
      floor = take(Morphology.erode(centre, tool.cutter().radius()));
    } else {
      centre = entered(take(Morphology.erode(ridden, tool.bearing().radius())));
      floor = take(Morphology.dilate(centre, tool.cutter().radius()));
    }
  }

  /** What the floor would be if the bearing followed everywhere. */
  Region wanted(double depth) {
    return grown(edge.region(), edge.isOutside() ? -depth : depth);
  }

  private Region grown(Region region, double by) {
    if (by == 0) {
      return region;
    }
    return take(by > 0 ? Morphology.dilate(region, by) : Morphology.erode(region, -by));
  }

  /** A router that stands outside does not get into what the bearing has closed off. */
  private static Region withoutHoles(Region region) {
    return new Region(region.pieces().stream().map(piece -> Outline.of(piece.outer())).toList());
  }

  /** The pieces that a cutter let down into the opening gets to. */
  private Region entered(Region centres) {
    Region fits = take(Morphology.erode(edge.region(), tool.cutter().radius()));
    List<Outline> reached =
        centres.pieces().stream()
            .filter(
                piece ->
                    fits.pieces().stream()
                        .anyMatch(fit -> piece.contains(fit.outer().primitives().get(0).start())))
            .toList();
    if (reached.isEmpty()) {
      throw new Problem(
          Place.field(edge.name()),
          "the slot cutter of "
              + Length.print(tool.cutter().diameter(), units)
              + " does not go into this opening; take a smaller one");
    }
    return new Region(reached);
  }

  private Region take(OffsetResult result) {
    tolerance = Math.max(tolerance, result.tolerance());
    result.caution().filter(c -> !cautions.contains(c)).ifPresent(cautions::add);
    return result.region();
  }

  double bearingRadius() {
    return tool.bearing().radius();
  }

  RoutedEdge edge() {
    return edge;
  }

  /** Beyond the floor: wood for an outside edge, the grooved opening for an opening. */
  Region region() {
    return floor;
  }

  /** The floor beside the run, cut off at the ends of the stock. */
  Optional<Path> floorPath(double depth) {
    return one(CutterPath.woodOnLeft(edge, floor), depth)
        .map(path -> StockClip.toSaw(path, edge.run()));
  }

  /** Where the cutter's centre runs, to where the cutter has left the stock. */
  Optional<Path> centrePath() {
    return one(
            CutterPath.woodOnLeft(edge, centre), Math.abs(tool.bearing().radius() + templateOffset))
        .map(path -> StockClip.clip(path, edge.run(), tool.cutter().radius()));
  }

  private Optional<Path> one(List<Loop> loops, double distance) {
    List<Path> paths = Along.followed(loops, edge.run(), distance);
    return paths.size() == 1 ? Optional.of(paths.get(0)) : Optional.empty();
  }

  double tolerance() {
    return tolerance;
  }

  List<String> cautions() {
    return cautions;
  }
}
