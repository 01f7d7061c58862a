package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.part.Cavity;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/** What is done to a part that names no operations: its routed edge and every cavity, one bit. */
public final class UsualOperations {

  private UsualOperations() {}

  /** The edge first, where any of it is routed, then the cavities in their order, all on face A. */
  public static List<Operation> of(Part part, Tooling tool) {
    return of(part, tool, Handling.USUAL);
  }

  /** The same, all worked in the maker's own way. */
  public static List<Operation> of(Part part, Tooling tool, Handling handling) {
    List<Operation> operations = new ArrayList<>();
    if (!part.contour().isAll(EdgeKind.SAWN)) {
      Target outside = Target.outside(part.contour());
      operations.add(
          new EdgeOperation(
              Head.of(outside.of(), Face.A).with(handling), tool, outside, OptionalDouble.empty()));
    }
    for (Cavity cavity : part.cavities()) {
      operations.add(of(cavity, tool, handling));
    }
    return operations;
  }

  private static Operation of(Cavity cavity, Tooling tool, Handling handling) {
    Head head = Head.of(cavity.name(), Face.A).with(handling);
    Target edge = Target.opening(cavity.name(), cavity.contour());
    return switch (cavity.kind()) {
      case THROUGH -> new ThroughOpening(head, tool, edge);
      case RECESS -> new Recess(head, tool, edge, cavity.depth().orElseThrow());
      case LEDGE -> new Ledge(head, tool, edge, cavity.depth().orElseThrow());
    };
  }
}
