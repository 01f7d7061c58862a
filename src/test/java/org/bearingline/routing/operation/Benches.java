package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;

/** Parts, tools and operations for tests. */
final class Benches {

  static final double INCH = 25.4;

  private Benches() {}

  /** A sawn board with its low corner at the origin, mm. */
  static Part board(double width, double height) {
    return part(Contour.sawn(Loop.rectangle(new Bounds(0, 0, width, height))));
  }

  /** The same, routed all round. */
  static Part routedBoard(double width, double height) {
    return part(Contour.routed(Loop.rectangle(new Bounds(0, 0, width, height))));
  }

  /** A board whose upper edge is routed and slopes down to the right: no mirror image of itself. */
  static Part wedge() {
    Loop loop =
        Loop.polygon(
            List.of(new Point(0, 0), new Point(500, 0), new Point(500, 100), new Point(0, 160)));
    return part(
        new Contour(loop, List.of(EdgeKind.SAWN, EdgeKind.SAWN, EdgeKind.ROUTED, EdgeKind.SAWN)));
  }

  static Part part(Contour contour) {
    return new Part("board", "a board", contour, List.of(), List.of(), List.of());
  }

  static Tooling collar(double bit, double collar) {
    return new Tooling(new Cutter(bit), new Follower.Collar(collar));
  }

  static Tooling flush(double bit) {
    return Tooling.flush(new Cutter(bit));
  }

  static RoutingSettings settings() {
    Cutter cutter = new Cutter(12.7);
    return RoutingSettings.usual(cutter, Follower.flush(cutter)).withThickness(19);
  }

  static OperationPlan plan(Part part, Operation... operations) {
    return OperationPlan.of(part, List.of(operations), settings(), Kit.usual());
  }

  static OperationPlan plan(Part part, FaceWishes wishes, Operation... operations) {
    return OperationPlan.of(part, List.of(operations), settings(), Kit.usual(), wishes);
  }

  static Target box(String name, double x, double y, double width, double height, double radius) {
    return Target.opening(
        name, Contour.routed(RoundedBox.of(new Point(x, y), width, height, radius, 0)));
  }

  static Recess recess(String name, Face face, Tooling tool, Target edge, double depth) {
    return new Recess(Head.of(name, face), tool, edge, depth);
  }

  static Recess recess(String name, Tooling tool, Target edge) {
    return recess(name, Face.A, tool, edge, 5);
  }

  static EdgeOperation edge(String name, Part part, Tooling tool) {
    return new EdgeOperation(
        Head.of(name, Face.A), tool, Target.outside(part.contour()), OptionalDouble.empty());
  }

  /** The opening of template 1 that an operation uses. */
  static Bounds opening(OperationPlan plan, String operation) {
    List<Bounds> found = new ArrayList<>();
    for (PlannedTemplate template : plan.templates()) {
      for (PlannedTemplate.Service service : template.services()) {
        if (service.operation().name().equals(operation)) {
          found.add(service.edge().bounds());
        }
      }
    }
    return found.get(0);
  }

  static int template(OperationPlan plan, String operation) {
    return plan.operations().stream()
        .filter(one -> one.operation().name().equals(operation))
        .findFirst()
        .orElseThrow()
        .template()
        .orElse(0);
  }
}
