package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Works a groove out, one run of routed edge after the other. */
final class GrooveMaker {

  /** A piece smaller than this, in mm², is rounding. */
  private static final double CRUMB_AREA = 1e-6;

  /** Less depth than this, in mm, is none. */
  private static final double NO_DEPTH = 1e-6;

  /** A floor that ends this near to the part's edge, in mm, ends on it. */
  private static final double ON_EDGE = 1e-6;

  private final Part part;
  private final SlotCutter tool;
  private final GrooveExtent extent;
  private final double templateOffset;
  private final double depth;
  private final Units units;
  private final List<GrooveRun> runs = new ArrayList<>();
  private final List<Groove.Shallow> shallow = new ArrayList<>();
  private final List<String> cautions = new ArrayList<>();
  private double tolerance;

  private GrooveMaker(
      Part part, SlotCutter tool, GrooveExtent extent, double templateOffset, Units units) {
    this.units = units;
    this.part = part;
    this.tool = tool;
    this.extent = extent;
    this.templateOffset = templateOffset;
    this.depth = tool.depth() - templateOffset;
  }

  static Groove make(
      Part part, SlotCutter tool, GrooveExtent extent, double templateOffset, Units units) {
    GrooveMaker maker = new GrooveMaker(part, tool, extent, templateOffset, units);
    if (maker.depth <= NO_DEPTH) {
      throw new Problem(
          Place.field("bearing"),
          "the template stands "
              + Length.print(templateOffset, units)
              + " outside the edge and the cutter reaches "
              + Length.print(tool.depth(), units)
              + " past it, so no groove is cut; ride the part's own edge or take a smaller bearing");
    }
    for (GroovedRuns.Run run : GroovedRuns.of(part, extent)) {
      maker.add(run);
    }
    return maker.groove();
  }

  private void add(GroovedRuns.Run run) {
    GrooveFloor floor = GrooveFloor.of(run, extent.edge(), tool, templateOffset, units);
    checkWood(floor, run.edge());
    shallow.addAll(GrooveShallows.of(floor, depth, units));
    Optional<Path> path = floor.floorPath(depth);
    Optional<Path> centre = floor.centrePath();
    if (path.isEmpty() || centre.isEmpty()) {
      throw cutsThrough();
    }
    checkEnds(path.get());
    runs.add(
        new GrooveStops(part, run, extent, tool, depth, cautions, units)
            .cut(path.get(), centre.get()));
    tolerance = Math.max(tolerance, floor.tolerance());
    floor.cautions().stream().filter(c -> !cautions.contains(c)).forEach(cautions::add);
  }

  /** A floor that runs through comes out at the end of the work, between its edges. */
  private void checkEnds(Path floor) {
    if (!floor.isClosed() && extent.fromStart().isEmpty()) {
      checkEnd(floor.start());
    }
    if (!floor.isClosed() && extent.fromEnd().isEmpty()) {
      checkEnd(floor.end());
    }
  }

  private void checkEnd(Point end) {
    Loop edge = part.contour().loop();
    if (edge.distanceTo(end) <= ON_EDGE) {
      return;
    }
    if (!edge.contains(end)) {
      throw cutsThrough();
    }
    throw new Problem(
        Place.field(extent.edge()),
        "the grooved edge goes on into a sawn one near x "
            + Length.print(end.x(), units)
            + ", y "
            + Length.print(end.y(), units)
            + ", so the groove does not come out there; call that edge routed too, or stop the"
            + " groove before it");
  }

  /** Behind the groove the part must stay in one piece. */
  private void checkWood(GrooveFloor floor, Path edge) {
    Region wood = Region.of(Outline.of(part.contour().loop()));
    if (!floor.edge().isOutside()) {
      if (isThere(Overlay.difference(floor.region(), wood))) {
        throw cutsThrough();
      }
      return;
    }
    Region behind = Overlay.intersection(withUngrooved(floor.region(), edge), wood);
    if (behind.pieces().stream().filter(GrooveMaker::isThere).count() != 1) {
      throw cutsThrough();
    }
    for (Cavity cavity : part.cavities()) {
      Region hole = Region.of(Outline.of(cavity.contour().loop()));
      if (cavity.kind() == Cavity.Kind.THROUGH
          && isThere(Overlay.difference(hole, floor.region()))) {
        cautions.add(
            "The groove along the outside edge breaks into the opening " + cavity.name() + ".");
      }
    }
  }

  /** A stopped groove leaves the wood before its first stop and past its last one alone. */
  private Region withUngrooved(Region beyondFloor, Path edge) {
    Region kept = beyondFloor;
    if (extent.fromStart().isPresent()) {
      PathPlace stop = PathPlace.along(edge, extent.fromStart().getAsDouble());
      kept = Overlay.union(kept, half(stop.on(edge), stop.tangent(edge).times(-1)));
    }
    if (extent.fromEnd().isPresent()) {
      PathPlace stop =
          PathPlace.along(edge, Math.max(0, edge.length() - extent.fromEnd().getAsDouble()));
      kept = Overlay.union(kept, half(stop.on(edge), stop.tangent(edge)));
    }
    return kept;
  }

  /** All of the part on one side of a line square to its edge. */
  private Region half(Point at, Point away) {
    Bounds box = part.contour().loop().bounds();
    double size = box.width() + box.height();
    Point side = away.left().times(size);
    Point far = at.plus(away.times(size));
    List<Point> corners = List.of(at.plus(side), at.minus(side), far.minus(side), far.plus(side));
    return Region.of(Outline.of(Loop.polygon(corners).counterClockwise()));
  }

  private static boolean isThere(Region region) {
    return region.pieces().stream().anyMatch(GrooveMaker::isThere);
  }

  private static boolean isThere(Outline piece) {
    return piece.area() > CRUMB_AREA;
  }

  private Problem cutsThrough() {
    return new Problem(
        Place.field(extent.edge()),
        "a groove "
            + Length.print(depth, units)
            + " deep cuts this part through; groove one side only, take a wider bearing or make"
            + " the part wider");
  }

  private Groove groove() {
    shallow.sort(Comparator.comparing(Groove.Shallow::at, Reach.ReadingOrder.FROM_LEFT));
    List<Groove.Shallow> numbered = new ArrayList<>();
    double least = depth;
    for (Groove.Shallow place : shallow) {
      numbered.add(
          new Groove.Shallow(
              numbered.size() + 1,
              place.piece(),
              place.at(),
              place.lostDepth(),
              place.depthLeft(),
              place.insideRadius()));
      least = Math.min(least, place.depthLeft());
    }
    return new Groove(tool, extent.edge(), depth, least, runs, numbered, tolerance, cautions);
  }
}
