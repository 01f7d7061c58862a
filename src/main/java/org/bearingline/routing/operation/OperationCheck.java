package org.bearingline.routing.operation;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.Pairing;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.RoutingSettings;

/** Refuses what cannot be worked, at the operation's place. */
final class OperationCheck {

  /** A piece smaller than this, in mm², is rounding and not wood. */
  private static final double CRUMB_AREA = 0.01;

  private final Part part;
  private final List<Operation> operations;
  private final OptionalDouble thickness;

  private OperationCheck(Part part, List<Operation> operations, RoutingSettings settings) {
    this.part = part;
    this.operations = operations;
    this.thickness = settings.thickness();
  }

  static void check(Part part, List<Operation> operations, RoutingSettings settings) {
    OperationCheck check = new OperationCheck(part, operations, settings);
    Set<String> names = new HashSet<>();
    for (Operation operation : operations) {
      if (!names.add(operation.name())) {
        throw operation.problem(
            "an operation “"
                + operation.name()
                + "” stands above; give each operation of a part its own name");
      }
      check.tools(operation);
      check.depth(operation);
      check.place(operation);
    }
    InlayCheck.check(operations);
    check.faces();
  }

  private void tools(Operation operation) {
    if (operation instanceof EdgeGroove || operation.tooling().isEmpty()) {
      return;
    }
    Tooling tool = operation.tooling().get();
    try {
      Pairing.check(tool.cutter(), tool.follower());
    } catch (Problem refused) {
      throw EdgeWork.located(operation, refused);
    }
  }

  private void depth(Operation operation) {
    if (operation.depth().isEmpty() || operation instanceof InlayPlug) {
      return;
    }
    double depth = operation.depth().getAsDouble();
    if (!(depth > 0)) {
      throw operation.problem(operation.name() + ": the depth must be more than 0");
    }
    if (operation instanceof HingeCups cups) {
      cups(cups);
    } else if (thickness.isPresent()
        && depth >= thickness.getAsDouble()
        && !(operation instanceof EdgeOperation)) {
      throw operation.problem(
          operation.name()
              + ": a "
              + operation.word()
              + " "
              + Sentences.mm(depth)
              + " deep goes through the stock of "
              + Sentences.mm(thickness.getAsDouble())
              + "; make it shallower, or the stock thicker");
    }
  }

  private void cups(HingeCups cups) {
    double floor = Facts.shipped().mm("cup-floor");
    double depth = cups.depth().orElseThrow();
    if (thickness.isPresent() && depth > thickness.getAsDouble() - floor) {
      throw cups.problem(
          cups.name()
              + ": a cup "
              + Sentences.mm(depth)
              + " deep "
              + (depth >= thickness.getAsDouble() ? "goes" : "all but goes")
              + " through the other face of stock "
              + Sentences.mm(thickness.getAsDouble())
              + " thick; leave at least "
              + Sentences.mm(floor)
              + ", with thicker stock or a hinge of a shallower cup");
    }
  }

  private void place(Operation operation) {
    Loop edge = part.contour().loop();
    for (Hole hole : operation.holes()) {
      double room = edge.distanceTo(hole.at());
      if (!edge.contains(hole.at()) || room < hole.diameter() / 2) {
        throw operation.problem(
            operation.name()
                + ": the hole at "
                + Sentences.at(hole.at())
                + " does not lie inside the part; check its position");
      }
    }
    if (operation instanceof Hollow hollow && !(hollow instanceof InlayPlug)) {
      Region over = Overlay.difference(region(hollow), Region.of(Outline.of(edge)));
      if (over.area() > CRUMB_AREA) {
        throw hollow.problem(
            hollow.name()
                + ": the "
                + hollow.word()
                + " runs out over the edge of the part near "
                + Sentences.at(over.pieces().get(0).bounds().center())
                + "; move it or make it smaller");
      }
    }
  }

  /** Blind work from both faces must not meet in the middle of the stock. */
  private void faces() {
    if (thickness.isEmpty()) {
      return;
    }
    for (Operation a : operations) {
      for (Operation b : operations) {
        if (a.face() == Face.A && b.face() == Face.B && isBlind(a) && isBlind(b)) {
          meeting(a, b);
        }
      }
    }
  }

  private static boolean isBlind(Operation operation) {
    return operation.depth().isPresent()
        && (operation instanceof Hollow && !(operation instanceof InlayPlug)
            || operation instanceof Drilled);
  }

  private void meeting(Operation a, Operation b) {
    double together = a.depth().getAsDouble() + b.depth().getAsDouble();
    if (together < thickness.getAsDouble()) {
      return;
    }
    for (Region fromA : regions(a)) {
      for (Region fromB : regions(b)) {
        Region both = Overlay.intersection(fromA, fromB);
        if (both.area() > CRUMB_AREA) {
          throw b.problem(
              b.name()
                  + " from face B meets "
                  + a.name()
                  + " from face A near "
                  + Sentences.at(both.pieces().get(0).bounds().center())
                  + ": together they are "
                  + Sentences.mm(together)
                  + " deep in stock of "
                  + Sentences.mm(thickness.getAsDouble())
                  + "; make one shallower or move it");
        }
      }
    }
  }

  private static List<Region> regions(Operation operation) {
    if (operation instanceof Hollow hollow) {
      return List.of(region(hollow));
    }
    return operation.holes().stream()
        .map(hole -> Region.of(Outline.of(Loop.of(Arc.circle(hole.at(), hole.diameter() / 2)))))
        .toList();
  }

  private static Region region(Hollow hollow) {
    return Region.of(Outline.of(hollow.edge().contour().loop()));
  }
}
