package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Target;
import org.bearingline.yaml.YamlNode;

/** Reads a groove along an edge. */
final class GrooveReader {

  /** A depth that differs by less than this, in mm, is the one asked for. */
  private static final double SAME_DEPTH = 0.05;

  private GrooveReader() {}

  static List<Operation> read(OperationFields f, String name) {
    f.allowOnly(
        Set.of("bit", "bearing"),
        "groove",
        "along",
        "side",
        "rides",
        "width",
        "from-face",
        "into",
        "stop-before-start",
        "stop-before-end");
    EdgeGroove.Rides rides = rides(f);
    Target target = f.has("along") ? f.edge("along") : Target.outside(f.part().contour());
    OptionalDouble into = f.optionalLength("into");
    GrooveExtent extent =
        new GrooveExtent(
            target.of(),
            f.has("side") ? Optional.of(f.side("side")) : Optional.empty(),
            f.optionalFrom0("stop-before-start"),
            f.optionalFrom0("stop-before-end"));
    return List.of(
        new EdgeGroove(
            f.head(name, Face.A),
            cutter(f, rides, into),
            target,
            extent,
            rides,
            f.optionalFrom0("from-face").orElseThrow(() -> missing(f, "from-face")),
            into));
  }

  private static Problem missing(OperationFields f, String field) {
    return f.problem("“" + field + ":” is missing here");
  }

  private static EdgeGroove.Rides rides(OperationFields f) {
    if (!f.has("rides")) {
      return EdgeGroove.Rides.WORK;
    }
    YamlNode rides = f.node().field("rides");
    return switch (rides.text()) {
      case "work" -> EdgeGroove.Rides.WORK;
      case "template" -> EdgeGroove.Rides.TEMPLATE;
      default ->
          throw rides.problem(
              "“"
                  + rides.text()
                  + "” is nothing a bearing rides; write work for the finished edge, or template");
    };
  }

  /** On the work's edge the depth is (D − B)/2, so bearing and depth settle each other. */
  private static SlotCutter cutter(OperationFields f, EdgeGroove.Rides rides, OptionalDouble into) {
    Cutter cutter = new Cutter(f.bit("bit"));
    double bearing;
    if (f.has("bearing")) {
      bearing = f.length("bearing");
    } else if (into.isPresent() && rides == EdgeGroove.Rides.WORK) {
      bearing = cutter.diameter() - 2 * into.getAsDouble();
      if (!(bearing > 0)) {
        throw f.node()
            .field("into")
            .problem("this cutter is too small to go in that deep; choose a larger one");
      }
    } else {
      throw missing(f, "bearing");
    }
    SlotCutter slot = slot(f, cutter, bearing);
    if (rides == EdgeGroove.Rides.WORK
        && into.isPresent()
        && Math.abs(slot.depth() - into.getAsDouble()) > SAME_DEPTH) {
      throw f.node()
          .field("into")
          .problem(
              "this cutter goes "
                  + Words.both(slot.depth())
                  + " into the edge its bearing rides, not "
                  + Words.both(into.getAsDouble())
                  + "; for that depth its bearing must be "
                  + Words.both(cutter.diameter() - 2 * into.getAsDouble())
                  + " wide");
    }
    return slot;
  }

  private static SlotCutter slot(OperationFields f, Cutter cutter, double bearing) {
    try {
      return new SlotCutter(cutter, new Follower.Bearing(bearing), f.length("width"));
    } catch (Problem refused) {
      throw refused.place() instanceof Place.Field ? f.problem(refused.getMessage()) : refused;
    }
  }
}
