package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Passes;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.FaceWishes;
import org.bearingline.routing.operation.Handling;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.routing.operation.UsualOperations;

/**
 * A part of a job with everything routing found of it.
 *
 * @param order what was asked for
 * @param result what it needs; of a part with operations, theirs together
 * @param kit whose tools were looked at
 * @param grain how its edges meet the fibres; empty for sheet stock
 * @param whole its operations; empty where it names none
 * @param way where the plate of its outer edge comes from
 */
record WorkedPart(
    PartOrder order,
    RoutingResult result,
    Kit kit,
    Optional<GrainWork> grain,
    Optional<WholeWork> whole,
    PlateWay way) {

  /** The plan of its operations; empty where it names none. */
  Optional<OperationPlan> plan() {
    return whole.map(WholeWork::plan);
  }

  /** Left or right, where it is one piece of a pair that are not the same. */
  Optional<String> hand() {
    if (way instanceof PlateWay.TurnedOver other) {
      return Optional.of(other.hand());
    }
    return order
        .operations()
        .faces()
        .pair()
        .filter(pair -> plan().isPresent() && !plan().get().faces().symmetrical())
        .map(FaceWishes.Pair::drawn);
  }

  /** The same, its edge from another plate. */
  WorkedPart by(PlateWay other) {
    return new WorkedPart(order, result, kit, grain, whole, other);
  }

  /** A part without operations worked with its face B up: feed and grain are those of that face. */
  WorkedPart fromFaceB() {
    List<FeedArrow> feed = result.feed().stream().map(FeedArrow::reversed).toList();
    Optional<GrainWork> seen =
        GrainWork.of(
            result.part(),
            result.settings().station(),
            Face.B,
            order.stock().grain(),
            Settings.units(order.wishes()));
    return new WorkedPart(order, result.withFeed(feed), kit, seen, whole, way);
  }

  static WorkedPart of(PartOrder order) {
    Kit kit = new KitOnDemand(order.wishes()).get();
    Part part = order.shape().part().named(order.name());
    return HalfPlate.asked(
        order.operations().isWritten() ? whole(order, part, kit) : plain(order, part, kit));
  }

  private static WorkedPart plain(PartOrder order, Part part, Kit kit) {
    Wishes wishes = order.wishes();
    Cutter cutter = Tools.cutter(wishes, part, kit, LargestCutter.of(part));
    Follower follower = Tools.follower(wishes, cutter, () -> kit);
    RoutingSettings settings = Settings.routing(wishes, cutter, follower);
    RoutingResult result = Routing.workOut(part, settings, kit);
    if (settings.station() == Station.TABLE) {
      result = TableFeed.of(result);
    }
    if (wishes.deepestPass().isPresent()) {
      result = ownPasses(order, result, kit);
    }
    return new WorkedPart(
        order,
        result,
        kit,
        GrainWork.of(
            part, settings.station(), Face.A, order.stock().grain(), Settings.units(wishes)),
        Optional.empty(),
        PlateWay.OWN);
  }

  /** Passes by the maker's own limit, refused where his bit or template does not allow them. */
  private static RoutingResult ownPasses(PartOrder order, RoutingResult result, Kit kit) {
    double limit = Settings.deepestPass(order.wishes()).orElseThrow();
    RoutingSettings settings = result.settings();
    Tooling tool = new Tooling(settings.cutter(), settings.follower());
    Handling handling = Handling.of(settings.station(), OptionalDouble.of(limit));
    setups(order, settings, kit)
        .check(UsualOperations.of(result.part(), tool, handling), Place.option("--deepest-pass"));
    return result
        .passes()
        .map(p -> result.withPasses(Passes.atMost(p.thickness(), limit, settings.units())))
        .orElse(result);
  }

  /** What setting up asks for, of a part that names no operations. */
  List<String> setUp() {
    RoutingSettings settings = result.settings();
    Tooling tool = new Tooling(settings.cutter(), settings.follower());
    Handling handling = Handling.of(settings.station(), Settings.deepestPass(order.wishes()));
    return setups(order, settings, kit).advice(UsualOperations.of(result.part(), tool, handling));
  }

  private static OperationSetups setups(PartOrder order, RoutingSettings settings, Kit kit) {
    return new OperationSetups(
        kit,
        settings.thickness().orElseThrow(),
        order.stock().templateThickness(),
        settings.units());
  }

  private static WorkedPart whole(PartOrder order, Part part, Kit kit) {
    Wishes wishes = order.wishes();
    Units units = Settings.units(wishes);
    Cutter cutter = Tools.cutter(wishes, part, kit, LargestCutter.of(part));
    Tooling usual = new Tooling(cutter, Tools.follower(wishes, cutter, () -> kit));
    RoutingSettings settings = Settings.routing(wishes, usual.cutter(), usual.follower());
    List<Operation> operations =
        order.operations().operations(part, order.shape(), usual, new OperationTools(wishes, kit));
    OperationPlan plan = planned(order, part, operations, settings, kit);
    WholeWork whole = WholeWork.of(plan, setups(order, settings, kit));
    Part finished = FinishedPart.of(part, operations);
    RoutingResult result = plan.asOne(settings, kit);
    return new WorkedPart(
        order,
        result,
        kit,
        GrainWork.of(finished, operations, order.stock().grain(), units),
        Optional.of(whole),
        PlateWay.OWN);
  }

  private static OperationPlan planned(
      PartOrder order, Part part, List<Operation> operations, RoutingSettings settings, Kit kit) {
    try {
      return OperationPlan.of(part, operations, settings, kit, order.operations().faces());
    } catch (Problem refused) {
      throw order.operations().located(refused);
    }
  }
}
