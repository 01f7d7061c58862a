package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.operation.Drilling;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Facts;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.HingeCups;
import org.bearingline.routing.operation.HingeLeaf;
import org.bearingline.routing.operation.Hole;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Tooling;

/** Reads what is let in or drilled for hinges, and plain drilling. */
final class HingeReader {

  private HingeReader() {}

  /** One operation for each place along the side. */
  static List<Operation> leaf(OperationFields f, String name) {
    f.allowOnly(
        OperationTools.UNSHARED, "hinge-leaf", "side", "at", "length", "width", "depth", "radius");
    BoardSide side = f.side("side");
    double length = f.length("length");
    double width = f.length("width");
    Tooling tool = f.tools().forLeaf(f, Math.min(length, width));
    double radius = f.optionalFrom0("radius").orElse(tool.cutter().radius());
    List<Double> places = f.along("at", side);
    List<Operation> leaves = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Head head = f.head(places.size() == 1 ? name : name + "-" + (i + 1), Face.A);
      leaves.add(
          HingeLeaf.at(
              head, tool, f.part(), side, places.get(i), length, width, radius, f.length("depth")));
    }
    return leaves;
  }

  static List<Operation> cups(OperationFields f, String name) {
    f.allowOnly(Set.of(), "hinge-cups", "side", "at", "diameter", "depth", "from-edge");
    BoardSide side = f.side("side");
    HingeCups.Cup usual = HingeCups.Cup.usual();
    HingeCups.Cup cup =
        new HingeCups.Cup(
            f.optionalLength("diameter").orElse(usual.diameter()),
            f.optionalLength("depth").orElse(usual.depth()),
            f.optionalLength("from-edge").orElse(usual.fromEdge()));
    List<Double> places = f.has("at") ? f.along("at", side) : nearBothEnds(f, side);
    return List.of(HingeCups.along(f.head(name, Face.B), f.part(), side, places, cup));
  }

  private static List<Double> nearBothEnds(OperationFields f, BoardSide side) {
    double fromEnd = Facts.shipped().mm("cup-from-end");
    Bounds box = f.part().contour().loop().bounds();
    return side.outward().x() == 0
        ? List.of(box.minX() + fromEnd, box.maxX() - fromEnd)
        : List.of(box.minY() + fromEnd, box.maxY() - fromEnd);
  }

  static List<Operation> drill(OperationFields f, String name) {
    f.allowOnly(Set.of(), "drill", "at", "diameter", "depth");
    double diameter = f.length("diameter");
    OptionalDouble depth = f.optionalLength("depth");
    List<Hole> holes = new ArrayList<>();
    for (Point at : f.points("at")) {
      holes.add(new Hole(at, diameter, depth, name));
    }
    return List.of(new Drilling(f.head(name, Face.A), holes));
  }
}
