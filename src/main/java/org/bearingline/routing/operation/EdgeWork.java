package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Template;

/**
 * One routed operation worked alone, before templates are shared.
 *
 * @param operation what is done
 * @param tool that the template is made for
 * @param result all that routing says of it
 * @param edge the template's edge: its outer loop, or its opening
 */
record EdgeWork(Routed operation, Tooling tool, RoutingResult result, Loop edge) {

  /** The operation with its own tool. */
  static EdgeWork of(Part part, Routed operation, RoutingSettings settings, Kit kit) {
    return of(part, operation, operation.tool(), settings, kit);
  }

  static EdgeWork of(Part part, Routed operation, Tooling tool, RoutingSettings settings, Kit kit) {
    try {
      RoutingResult result =
          Routing.workOut(alone(part, operation), with(settings, operation, tool), kit);
      Template template = result.templates().get(0);
      Outline plate = template.plate();
      return new EdgeWork(
          operation,
          tool,
          result,
          operation.edge().outside() ? plate.outer() : plate.openings().get(0));
    } catch (Problem refused) {
      throw located(operation, refused);
    }
  }

  /** A problem of the tools, told at the operation where that is written somewhere. */
  static Problem located(Operation operation, Problem refused) {
    return operation.place() instanceof Place.Nowhere
        ? refused
        : new Problem(operation.place(), operation.name() + ": " + refused.getMessage(), refused);
  }

  /** The part as this operation alone leaves it. */
  private static Part alone(Part part, Routed operation) {
    Target target = operation.edge();
    Contour around = target.outside() ? target.contour() : Contour.sawn(part.contour().loop());
    List<Cavity> cavities = target.outside() ? List.of() : List.of(cavity(operation));
    return new Part(operation.name(), part.about(), around, cavities, List.of(), List.of());
  }

  /** What an operation takes out of the part. */
  static Cavity cavity(Routed operation) {
    Cavity.Kind kind =
        operation.depth().isEmpty()
            ? Cavity.Kind.THROUGH
            : operation instanceof Ledge ? Cavity.Kind.LEDGE : Cavity.Kind.RECESS;
    return new Cavity(operation.edge().of(), kind, operation.edge().contour(), operation.depth());
  }

  private static RoutingSettings with(RoutingSettings s, Routed operation, Tooling tool) {
    return new RoutingSettings(
        tool.cutter(),
        tool.follower(),
        s.allowance(),
        s.blade(),
        s.runOut(),
        s.margin(),
        s.minimumWidth(),
        operation.depth().isPresent()
            ? OptionalDouble.of(operation.depth().getAsDouble())
            : s.thickness(),
        s.units(),
        operation.station());
  }

  boolean isOutside() {
    return operation.edge().outside();
  }

  /** The tool that is in the router: of a groove the slot cutter itself. */
  Tooling cutting() {
    return operation instanceof EdgeGroove groove ? groove.tool() : tool;
  }

  /** What the tool makes of the work along this edge. */
  Region made() {
    return Play.cut(edge, isOutside(), cutting());
  }

  /** What it ought to make, where the edge is routed all round; a groove has no edge of its own. */
  Optional<Region> designed() {
    Contour contour = operation.edge().contour();
    return operation instanceof EdgeGroove || !contour.isAll(EdgeKind.ROUTED)
        ? Optional.empty()
        : Optional.of(Region.of(Outline.of(contour.loop())));
  }

  Bounds bounds() {
    return edge.bounds();
  }
}
