package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Loop;

/** A plate while edges are put into it: its own outer edge, worked along or not, and openings. */
final class PlateDraft {

  private final Loop outer;
  private final double bridge;
  private final Units units;
  private final List<PlateEdge> edges = new ArrayList<>();

  /**
   * @param bridge mm of plate to be left between two edges
   * @param units for the sentences
   */
  PlateDraft(Loop outer, double bridge, Units units) {
    this.outer = outer;
    this.bridge = bridge;
    this.units = units;
  }

  Loop outer() {
    return outer;
  }

  List<PlateEdge> edges() {
    return edges;
  }

  PlateEdge put(EdgeWork work) {
    PlateEdge edge = new PlateEdge(work);
    edges.add(edge);
    return edge;
  }

  Optional<PlateEdge> making(EdgeWork work) {
    return edges.stream().filter(edge -> edge.makes(work)).findFirst();
  }

  /** Why a further opening does not go into this plate; empty where it does. */
  Optional<String> refusal(EdgeWork work) {
    Loop opening = work.edge();
    if (!Clear.isInside(opening, outer)) {
      return Optional.of("it reaches out over the edge of the plate");
    }
    double rim = Clear.between(opening, outer);
    if (rim < bridge) {
      return Optional.of(
          "only "
              + Length.print(rim, units)
              + " of plate would stay between it and the plate's edge");
    }
    for (PlateEdge other : edges) {
      if (!other.isOutside()) {
        Optional<String> refusal = beside(opening, other);
        if (refusal.isPresent()) {
          return refusal;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> beside(Loop opening, PlateEdge other) {
    String name = other.served().get(0).name();
    if (!Clear.isBeside(opening, other.loop())) {
      return Optional.of(
          "its opening and that of " + name + " lie in each other, and a plate has one edge there");
    }
    double between = Clear.between(opening, other.loop());
    return between < bridge
        ? Optional.of(
            "only "
                + Length.print(between, units)
                + " of plate would stay between it and the opening of "
                + name)
        : Optional.empty();
  }
}
