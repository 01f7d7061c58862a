package org.bearingline.routing;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * Which edge a groove runs along and how far.
 *
 * @param edge {@link Template#OUTSIDE_EDGE} or the name of a through opening
 * @param side of the part whose routed edge is grooved; empty for every routed stretch of the edge
 * @param fromStart mm along the edge, wood on the left, from its start to where the groove is first
 *     fully deep; empty for a groove that runs through the end
 * @param fromEnd likewise back from the edge's end
 */
public record GrooveExtent(
    String edge, Optional<BoardSide> side, OptionalDouble fromStart, OptionalDouble fromEnd) {

  public GrooveExtent {
    Objects.requireNonNull(edge);
    Objects.requireNonNull(side);
    Objects.requireNonNull(fromStart);
    Objects.requireNonNull(fromEnd);
  }

  /** Through, along every routed stretch of the outside edge. */
  public static GrooveExtent through() {
    return new GrooveExtent(
        Template.OUTSIDE_EDGE, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  public GrooveExtent alongEdge(String name) {
    return new GrooveExtent(name, side, fromStart, fromEnd);
  }

  public GrooveExtent on(BoardSide only) {
    return new GrooveExtent(edge, Optional.of(only), fromStart, fromEnd);
  }

  /** Stopped so many mm before the edge's start and end. */
  public GrooveExtent stopped(double beforeStart, double beforeEnd) {
    return new GrooveExtent(
        edge, side, OptionalDouble.of(beforeStart), OptionalDouble.of(beforeEnd));
  }

  public GrooveExtent stoppedAtStart(double mm) {
    return new GrooveExtent(edge, side, OptionalDouble.of(mm), fromEnd);
  }

  public GrooveExtent stoppedAtEnd(double mm) {
    return new GrooveExtent(edge, side, fromStart, OptionalDouble.of(mm));
  }

  /** The same on the part's mirror image, whose edge is travelled the other way. */
  public GrooveExtent mirrored(Similarity mirror) {
    return new GrooveExtent(edge, side.map(one -> one.mirrored(mirror)), fromEnd, fromStart);
  }
}
