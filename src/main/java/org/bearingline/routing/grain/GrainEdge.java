package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.Template;

/**
 * An edge to be read against the grain.
 *
 * @param name {@link Template#OUTSIDE_EDGE}, a cavity's name or an operation's
 * @param contour wood on the left, seen from face A; only its routed primitives are read
 */
public record GrainEdge(String name, Contour contour) {

  public GrainEdge {
    Objects.requireNonNull(name);
    Objects.requireNonNull(contour);
  }

  /** The outer edge first, then the cavities. */
  public static List<GrainEdge> of(Part part) {
    List<GrainEdge> edges = new ArrayList<>();
    edges.add(new GrainEdge(Template.OUTSIDE_EDGE, part.contour()));
    for (Cavity cavity : part.cavities()) {
      edges.add(new GrainEdge(cavity.name(), cavity.contour()));
    }
    return edges;
  }
}
