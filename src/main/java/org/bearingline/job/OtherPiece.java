package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.operation.FaceWishes;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.OtherHand;
import org.bearingline.routing.operation.PlannedOperation;

/** Works out the piece of a left and right pair that the shape does not draw. */
final class OtherPiece {

  private OtherPiece() {}

  /** The other piece; empty where the part is not one of a pair, or its own mirror image. */
  static Optional<WorkedPart> of(WorkedPart drawn) {
    return drawn
        .hand()
        .flatMap(hand -> drawn.order().operations().faces().pair())
        .map(pair -> mirrored(drawn, drawn.plan().orElseThrow(), pair));
  }

  /** The name of the other piece's files, whether or not it will be made. */
  static String name(String part, FaceWishes.Pair pair) {
    return part + "-" + pair.mirrored();
  }

  private static WorkedPart mirrored(WorkedPart drawn, OperationPlan plan, FaceWishes.Pair pair) {
    PartOrder order = drawn.order();
    Units units = Settings.units(order.wishes());
    String name = name(order.name(), pair);
    RoutingSettings settings = drawn.result().settings();
    OperationPlan other = OtherHand.of(plan, pair, name, settings, drawn.kit());
    OperationSetups setups =
        new OperationSetups(
            drawn.kit(),
            Settings.thickness(order.wishes()),
            order.stock().templateThickness(),
            units);
    List<Operation> operations =
        other.operations().stream().map(PlannedOperation::operation).toList();
    Part finished = FinishedPart.of(other.part(), operations);
    Grain grain = mirrored(order.stock().grain(), plan.faces().seenFromB());
    StockWishes stock =
        new StockWishes(grain, order.stock().templateThickness(), order.stock().species());
    return new WorkedPart(
        order.otherPiece(name, stock),
        other.asOne(settings, drawn.kit()),
        drawn.kit(),
        GrainWork.of(finished, operations, grain, units),
        Optional.of(WholeWork.of(other, setups)),
        new PlateWay.TurnedOver(pair.mirrored(), order.name()));
  }

  private static Grain mirrored(Grain grain, Similarity mirror) {
    if (grain.degrees().isEmpty()) {
      return grain;
    }
    Point along = Point.polar(1, grain.degrees().getAsDouble());
    Point image = mirror.apply(along).minus(mirror.apply(Point.ORIGIN));
    return new Grain(OptionalDouble.of(Degrees.of(image)));
  }
}
