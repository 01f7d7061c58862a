package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.Template;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Target;

/**
 * An edge to be read against the grain.
 *
 * @param name {@link Template#OUTSIDE_EDGE}, a cavity's name or an operation's
 * @param contour wood on the left, seen from face A; only its routed primitives are read
 * @param only the one face it can be worked from, where it does not go through the wood; empty for
 *     an edge that either face can be turned up for
 */
public record GrainEdge(String name, Contour contour, Optional<Face> only) {

  public GrainEdge {
    Objects.requireNonNull(name);
    Objects.requireNonNull(contour);
    Objects.requireNonNull(only);
  }

  /** An edge right through the wood. */
  public GrainEdge(String name, Contour contour) {
    this(name, contour, Optional.empty());
  }

  /** The outer edge first, then the cavities; the depth of a blind one is measured from face A. */
  public static List<GrainEdge> of(Part part) {
    List<GrainEdge> edges = new ArrayList<>();
    edges.add(new GrainEdge(Template.OUTSIDE_EDGE, part.contour()));
    for (Cavity cavity : part.cavities()) {
      boolean through = cavity.kind() == Cavity.Kind.THROUGH;
      Optional<Face> only = through ? Optional.empty() : Optional.of(Face.A);
      edges.add(new GrainEdge(cavity.name(), cavity.contour(), only));
    }
    return edges;
  }

  /** What an operation shapes, under the operation's name; empty for what is drilled. */
  public static Optional<GrainEdge> of(Operation operation) {
    Optional<Face> only =
        operation.depth().isEmpty() ? Optional.empty() : Optional.of(operation.face());
    return operation
        .target()
        .map(Target::contour)
        .map(contour -> new GrainEdge(operation.name(), contour, only));
  }

  /** Whether a router can come to it on that face. */
  public boolean isOpenTo(Face face) {
    return only.isEmpty() || only.get() == face;
  }
}
