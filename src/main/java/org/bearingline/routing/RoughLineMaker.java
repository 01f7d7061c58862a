package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.kit.SawBlade;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * S = (P⁺ ⊕ D(allowance)) closed by D(ρ), its outside turns tighter than ρ squared up by tangents
 * ({@link OutsideTurns}), along routed edges and a little past the ends of the wood.
 */
final class RoughLineMaker {

  /** How far the line is drawn past the ends of the wood, so that a maker sees it leave; mm. */
  private static final double DRAWN_PAST = 10;

  /** A hollow that the line fills by less than this, in mm, is sawn as it is. */
  private static final double NOT_BRIDGED = 0.1;

  private final RoutingSettings settings;
  private final List<Path> paths = new ArrayList<>();
  private final List<Path> openings = new ArrayList<>();
  private final List<Point> corners = new ArrayList<>();
  private final List<RoughLine.Bridge> bridged = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private double wasteArea;

  private RoughLineMaker(RoutingSettings settings) {
    this.settings = settings;
  }

  /** The line of a part; empty where there is nothing to saw along. */
  static Optional<RoughLine> of(Part part, RoutingSettings settings) {
    if (!(settings.allowance() > 0)) {
      throw new Problem(
          Place.field("allowance"),
          "the rough line needs an allowance above 0, or the saw would cut into the part");
    }
    RoughLineMaker maker = new RoughLineMaker(settings);
    double turn = settings.blade().map(SawBlade::smallestRadius).orElse(0.0);
    double runOut = Math.max(2 * turn, 4 * DRAWN_PAST) + settings.allowance();
    for (RoutedEdge edge : RoutedEdge.all(part, runOut, runOut)) {
      if (edge.isOutside()) {
        maker.saw(edge, turn);
      } else if (edge.cavity().orElseThrow().kind() == Cavity.Kind.THROUGH) {
        maker.jigsaw(edge);
      }
    }
    return maker.finished();
  }

  private Optional<RoughLine> finished() {
    if (paths.isEmpty() && openings.isEmpty() && notes.isEmpty()) {
      return Optional.empty();
    }
    double length = 0;
    for (Path path : paths) {
      length += path.length();
    }
    for (Path path : openings) {
      length += path.length();
    }
    return Optional.of(
        new RoughLine(
            settings.allowance(),
            settings.blade(),
            paths,
            openings,
            length,
            wasteArea,
            bridged,
            corners,
            notes));
  }

  private void saw(RoutedEdge edge, double turn) {
    Region grown = Morphology.dilate(edge.region(), settings.allowance()).region();
    Region sawable = turn > 0 ? Morphology.close(grown, turn).region() : grown;
    if (turn > 0) {
      bridges(Overlay.difference(sawable, grown), sawable);
    }
    List<Loop> loops = new ArrayList<>();
    for (Outline piece : sawable.pieces()) {
      // A hollow shut off by its own neck is left to the router: the saw does not get in.
      loops.add(piece.outer());
    }
    for (Path run : Along.followed(loops, edge.run(), settings.allowance())) {
      Path drawn = StockClip.clip(run, edge.run(), DRAWN_PAST);
      OutsideTurns turns = OutsideTurns.squared(drawn, turn, settings.allowance());
      paths.add(turns.path());
      corners.addAll(turns.corners());
      wasteArea += Waste.between(StockClip.toSaw(turns.path(), edge.run()), edge);
    }
    if (!corners.isEmpty()) {
      notes.add(
          "At the sharp turns of the saw line the blade cannot follow: saw straight on out of the"
              + " wood and come in again along the next stretch.");
    }
  }

  private void bridges(Region filled, Region sawable) {
    List<RoughLine.Bridge> found = new ArrayList<>();
    NearestEdge line = NearestEdge.of(sawable.loops());
    for (Outline piece : filled.pieces()) {
      Bridged deepest = Bridged.of(piece, line);
      if (deepest.depth() > NOT_BRIDGED) {
        found.add(new RoughLine.Bridge(0, deepest.at(), deepest.depth()));
      }
    }
    found.sort((a, b) -> Reach.ReadingOrder.FROM_LEFT.compare(a.at(), b.at()));
    for (RoughLine.Bridge bridge : found) {
      bridged.add(new RoughLine.Bridge(bridged.size() + 1, bridge.at(), bridge.extraDepth()));
    }
  }

  private void jigsaw(RoutedEdge edge) {
    Region inside = Morphology.erode(edge.region(), settings.allowance()).region();
    if (inside.isEmpty()) {
      notes.add(
          "No saw line fits into "
              + edge.name()
              + ": bore most of the waste out and take the rest with the bit, bit by bit.");
      return;
    }
    openings.addAll(
        Along.followed(CutterPath.woodOnLeft(edge, inside), edge.run(), settings.allowance()));
    wasteArea += edge.region().area() - inside.area();
    String note =
        "A band saw does not get into an opening: bore a hole inside its line, in tight corners too,"
            + " and cut it out with a jig saw or scroll saw, or bore the waste out hole by hole.";
    if (!notes.contains(note)) {
      notes.add(note);
    }
  }

  /** The deepest point of a hollow that the line passes over. */
  private record Bridged(Point at, double depth) {
    static Bridged of(Outline piece, NearestEdge line) {
      Bridged deepest = new Bridged(piece.outer().primitives().get(0).start(), 0);
      for (Primitive part : piece.outer().primitives()) {
        for (int i = 0; i < 16; i++) {
          Point p = part.pointAt(i / 16.0);
          double depth = line.distanceTo(p);
          if (depth > deepest.depth()) {
            deepest = new Bridged(p, depth);
          }
        }
      }
      return deepest;
    }
  }
}
