package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Ends a groove where it stops: from the last place of full depth the floor rises round the
 * cutter's circle to the edge. Along a straight edge that tail is √(r² − R²) long.
 */
final class GrooveStops {

  /** Degrees between tries on the way round the cutter's circle. */
  private static final double TRY = 0.5;

  private static final int STEPS = 60;

  /** A floor this near to the cutter's circle, in mm, is cut by it. */
  private static final double ON = 1e-5;

  private final Outline wood;
  private final GroovedRuns.Run run;
  private final GrooveExtent extent;
  private final SlotCutter tool;
  private final double depth;
  private final Units units;
  private final List<String> cautions;

  GrooveStops(
      Part part,
      GroovedRuns.Run run,
      GrooveExtent extent,
      SlotCutter tool,
      double depth,
      List<String> cautions,
      Units units) {
    this.units = units;
    this.wood =
        run.cavity().isPresent()
            ? new Outline(part.contour().loop(), List.of(run.contour().loop()))
            : Outline.of(part.contour().loop());
    this.run = run;
    this.extent = extent;
    this.tool = tool;
    this.depth = depth;
    this.cautions = cautions;
  }

  /** The run with its ends, out of the floor and the centre's path of a through groove. */
  GrooveRun cut(Path floor, Path centre) {
    boolean stopsFirst = extent.fromStart().isPresent();
    boolean stopsLast = extent.fromEnd().isPresent();
    if (!stopsFirst && !stopsLast) {
      return new GrooveRun(run.edge(), floor, centre, 0, 0);
    }
    check();
    double length = run.edge().length();
    double from = extent.fromStart().orElse(0);
    double until = length - extent.fromEnd().orElse(0);
    PathPlace floorFrom = new PathPlace(0, 0);
    PathPlace floorUntil = end(floor);
    PathPlace centreFrom = floorFrom;
    PathPlace centreUntil = end(centre);
    double edgeFrom = 0;
    double edgeUntil = length;
    List<Primitive> pieces = new ArrayList<>();
    if (stopsFirst) {
      centreFrom = beside(centre, from);
      floorFrom = below(centre, centreFrom, floor, from);
      Arc rise = rise(centreFrom.on(centre), floorFrom.on(floor), 1);
      pieces.add(rise.reversed());
      edgeFrom = tailEnd(rise.end(), from, from, "start");
    }
    Arc last = null;
    if (stopsLast) {
      centreUntil = beside(centre, until);
      floorUntil = below(centre, centreUntil, floor, until);
      last = rise(centreUntil.on(centre), floorUntil.on(floor), -1);
      edgeUntil = tailEnd(last.end(), until, extent.fromEnd().getAsDouble(), "end");
    }
    pieces.addAll(floorFrom.to(floorUntil, floor));
    if (last != null) {
      pieces.add(last);
    }
    return new GrooveRun(
        between(run.edge(), edgeFrom, edgeUntil),
        new Path(joined(pieces)),
        new Path(centreFrom.to(centreUntil, centre)),
        stopsFirst ? from - edgeFrom : 0,
        stopsLast ? edgeUntil - until : 0);
  }

  private void check() {
    double from = extent.fromStart().orElse(0);
    double back = extent.fromEnd().orElse(0);
    if (run.edge().isClosed()) {
      throw new Problem(
          Place.field(extent.edge()),
          "this edge runs all round and has no ends to stop a groove at; groove all of it, or saw"
              + " one of its sides");
    }
    if (!(from >= 0 && back >= 0 && from + back < run.edge().length())) {
      throw new Problem(
          Place.field(extent.edge()),
          "stops "
              + Length.print(from, units)
              + " and "
              + Length.print(back, units)
              + " from the ends leave nothing of an edge "
              + Length.print(run.edge().length(), units)
              + " long; move them nearer to the ends");
    }
  }

  private static PathPlace end(Path path) {
    return new PathPlace(path.primitives().size() - 1, 1);
  }

  private static Path between(Path path, double from, double until) {
    return new Path(PathPlace.along(path, from).to(PathPlace.along(path, until), path));
  }

  /** Where the cutter's centre is when it is square to the edge's place at {@code length} mm. */
  private PathPlace beside(Path centre, double length) {
    return PathPlace.nearest(centre, PathPlace.along(run.edge(), length).on(run.edge()));
  }

  /** The floor straight across from the centre. */
  private PathPlace below(Path centre, PathPlace place, Path floor, double length) {
    Point c = place.on(centre);
    Point deepest = c.plus(place.tangent(centre).left().times(tool.cutter().radius()));
    PathPlace found = PathPlace.nearest(floor, deepest);
    if (found.on(floor).distanceTo(deepest) > ON) {
      Point at = PathPlace.along(run.edge(), length).on(run.edge());
      throw new Problem(
          Place.field(extent.edge()),
          String.format(
              Locale.ROOT,
              "the groove would stop in the corner near x %s, y %s, where its floor has no full"
                  + " depth; move the stop by %s either way",
              Length.print(at.x(), units),
              Length.print(at.y(), units),
              Length.printAtLeast(depth, units)));
    }
    return found;
  }

  /**
   * The cutter's circle from the floor up to where it leaves the wood.
   *
   * @param sense 1 at the start of the groove, where it rises counter-clockwise, −1 at its end
   */
  private Arc rise(Point centre, Point floor, int sense) {
    double radius = centre.distanceTo(floor);
    double start = floor.minus(centre).degrees();
    double low = 0;
    double high = 180;
    for (double turn = TRY; turn < 180; turn += TRY) {
      if (!wood.contains(on(centre, radius, start + sense * turn))) {
        high = turn;
        break;
      }
      low = turn;
    }
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (wood.contains(on(centre, radius, start + sense * middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Arc(centre, radius, floor, on(centre, radius, start + sense * high), sense * high);
  }

  private static Point on(Point centre, double radius, double degrees) {
    return centre.plus(Point.polar(radius, degrees));
  }

  /** mm along the edge to where the tail comes out. */
  private double tailEnd(Point out, double stop, double wanted, String end) {
    PathPlace place = PathPlace.nearest(run.edge(), out);
    if (place.on(run.edge()).distanceTo(out) > ON) {
      cautions.add(
          "The stopped groove comes out at the "
              + end
              + " of the work: its round end runs on past the stop, which is only "
              + Length.print(wanted, units)
              + " away from it.");
      return end.equals("start") ? 0 : run.edge().length();
    }
    double length = place.length(run.edge());
    return end.equals("start") ? Math.min(stop, length) : Math.max(stop, length);
  }

  /** Neighbours meet to the last bit. */
  private static List<Primitive> joined(List<Primitive> pieces) {
    List<Primitive> joined = new ArrayList<>();
    for (Primitive piece : pieces) {
      joined.add(
          joined.isEmpty()
              ? piece
              : piece.withEnds(joined.get(joined.size() - 1).end(), piece.end()));
    }
    return joined;
  }
}
