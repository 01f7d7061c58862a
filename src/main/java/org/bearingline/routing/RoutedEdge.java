package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/**
 * One edge of a part that the router shapes, with its run-out.
 *
 * @param name {@link Template#OUTSIDE_EDGE} or the cavity's name
 * @param contour as designed, wood on the left
 * @param cavity empty for the outer edge
 * @param run the edge run on
 */
record RoutedEdge(String name, Contour contour, Optional<Cavity> cavity, ExtendedEdge run) {

  /** The outer edge first, where any of it is routed, then the cavities. */
  static List<RoutedEdge> all(Part part, double runOut, double margin) {
    List<RoutedEdge> edges = new ArrayList<>();
    if (!part.contour().isAll(EdgeKind.SAWN)) {
      edges.add(
          new RoutedEdge(
              Template.OUTSIDE_EDGE,
              part.contour(),
              Optional.empty(),
              ExtendedEdge.ofOutside(part.contour(), runOut, margin)));
    }
    for (Cavity cavity : part.cavities()) {
      edges.add(
          new RoutedEdge(
              cavity.name(),
              cavity.contour(),
              Optional.of(cavity),
              ExtendedEdge.ofCavity(cavity.contour(), runOut)));
    }
    return edges;
  }

  boolean isOutside() {
    return cavity.isEmpty();
  }

  /** What the edge bounds: P⁺ of the outer edge, the waste itself of a cavity. */
  Region region() {
    return Region.of(Outline.of(run.loop()));
  }
}
