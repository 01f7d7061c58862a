package org.bearingline.routing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A rail, stile or muntin and which of its edges holds the panel: a routed one, or a straight one
 * that was sawn and jointed.
 *
 * @param part as it is drawn
 * @param side on which its grooved edge lies, as it is drawn
 */
public record FrameMember(Part part, BoardSide side) {

  private static final int HALVINGS = 60;

  public FrameMember {
    Objects.requireNonNull(part);
    Objects.requireNonNull(side);
  }

  /**
   * With the edge that is meant where nobody says: its one routed edge, else its lower one.
   *
   * @throws Problem where several edges are routed
   */
  public static FrameMember of(Part part) {
    List<GroovedRuns.Run> runs = GroovedRuns.routed(part);
    if (runs.isEmpty()) {
      return new FrameMember(part, BoardSide.BOTTOM);
    }
    // Refuses what is no rail, with its own words.
    RailEdge.of(part);
    return new FrameMember(part, runs.get(0).side().orElseThrow());
  }

  /** Where the groove runs: through, along its edge. */
  public GrooveExtent extent() {
    return GrooveExtent.through().on(side);
  }

  /** The part with its grooved edge alone called routed. */
  public Part grooved() {
    GroovedRuns.Run run = run();
    return new Part(
        part.name(), part.about(), run.contour(), part.cavities(), part.marks(), part.notes());
  }

  private GroovedRuns.Run run() {
    try {
      return GroovedRuns.of(part, extent()).get(0);
    } catch (Problem refused) {
      throw refused.at(Place.field(part.name()));
    }
  }

  /** mm between its shoulders, along its grooved edge; from end to end where it has none. */
  public double between() {
    Path inner = RailEdge.of(grooved()).inner();
    return inner.end().minus(inner.start()).norm();
  }

  /** mm of its grooved edge from end to end, tenons and all. */
  public double length() {
    return run().edge().length();
  }

  /** Whether its grooved edge is one straight between its shoulders. */
  public boolean isStraight() {
    return RailEdge.of(grooved()).isStraight();
  }

  /** Whether it stands between two other members, by its shoulder lines. */
  public boolean hasShoulders() {
    return part.marks().stream().anyMatch(this::isShoulder);
  }

  private boolean isShoulder(Mark mark) {
    if (!(mark instanceof Mark.ShoulderLine line)) {
      return false;
    }
    Point along = line.to().minus(line.from()).unit();
    Path edge = run().edge();
    Point chord = edge.end().minus(edge.start()).unit();
    return Math.abs(along.dot(chord)) < Math.sqrt(0.5);
  }

  /** mm of its wood behind the start of its edge between the shoulders, square to that edge. */
  public double widthAtStart() {
    return widthAt(RailEdge.of(grooved()).inner().start());
  }

  /** The same at the edge's end, wood on the left. */
  public double widthAtEnd() {
    return widthAt(RailEdge.of(grooved()).inner().end());
  }

  private double widthAt(Point edge) {
    Point into = RailEdge.of(grooved()).intoWood();
    Loop wood = part.contour().loop();
    Bounds box = wood.bounds();
    double low = 0;
    double high = box.width() + box.height();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (wood.contains(edge.plus(into.times(middle)))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The groove stopped before both ends of its edge, or through where nothing is said. */
  public GrooveExtent stopped(OptionalDouble beforeStart, OptionalDouble beforeEnd) {
    return new GrooveExtent(Template.OUTSIDE_EDGE, Optional.of(side), beforeStart, beforeEnd);
  }
}
