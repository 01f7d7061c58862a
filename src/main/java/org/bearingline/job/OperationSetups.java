package org.bearingline.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Handling;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.PlannedOperation;
import org.bearingline.routing.operation.Routed;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.routing.setup.GrooveRequest;
import org.bearingline.routing.setup.GrooveSetup;
import org.bearingline.routing.setup.Setup;
import org.bearingline.routing.setup.SetupRequest;
import org.bearingline.routing.setup.SetupTool;

/**
 * Sets up the operations of a part with the maker's own bits.
 *
 * @param kit the maker's tools
 * @param stock thickness of the work, mm
 * @param template thickness of the template, mm; empty where not chosen yet
 * @param units of the sentences
 */
record OperationSetups(Kit kit, double stock, OptionalDouble template, Units units) {

  /** The operation with its setup; refused at its own place. */
  WorkedOperation of(int number, PlannedOperation planned) {
    Operation operation = planned.operation();
    try {
      if (operation instanceof EdgeGroove groove) {
        return new WorkedOperation(
            number, planned, Optional.empty(), Optional.of(groove(groove, planned)));
      }
      if (operation instanceof Routed routed) {
        return new WorkedOperation(
            number, planned, Optional.of(Setup.of(request(routed), units)), Optional.empty());
      }
      return new WorkedOperation(number, planned, Optional.empty(), Optional.empty());
    } catch (Problem refused) {
      throw operation.problem(operation.name() + ": " + refused.getMessage());
    }
  }

  /**
   * What setting up operations asks for, said once where it is the same for several; what a bit
   * cannot do is said too, not refused.
   */
  List<String> advice(List<Operation> operations) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Operation operation : operations) {
      if (operation instanceof Routed routed) {
        alike.computeIfAbsent(advice(routed), unused -> new ArrayList<>()).add(operation.name());
      }
    }
    alike.remove("");
    List<String> lines = new ArrayList<>();
    boolean several = operations.size() > 1;
    alike.forEach(
        (said, names) ->
            lines.add(several ? Words.capital(Words.list(names)) + ": " + said : said));
    return lines;
  }

  private String advice(Routed operation) {
    try {
      return String.join(" ", Setup.of(request(operation), units).advice());
    } catch (Problem refused) {
      return Words.capital(refused.getMessage()) + ".";
    }
  }

  /** Refuses, at a place, operations that cannot be set up. */
  void check(List<Operation> operations, Place place) {
    try {
      for (Operation operation : operations) {
        if (operation instanceof Routed routed) {
          Setup.of(request(routed), units);
        }
      }
    } catch (Problem refused) {
      throw new Problem(place, refused.getMessage(), refused);
    }
  }

  private GrooveSetup groove(EdgeGroove groove, PlannedOperation planned) {
    return GrooveSetup.of(
        new GrooveRequest(
            groove.name(),
            groove.cutter(),
            groove.towardsRouter(),
            groove.fromFace(),
            groove.cutter().thickness(),
            planned.groove().orElseThrow().depthWanted(),
            groove.head().handling().deepestPass(),
            kit.bearings(),
            planned.groove().orElseThrow().isStraight()),
        units);
  }

  private SetupRequest request(Routed operation) {
    boolean through = operation.depth().isEmpty();
    return new SetupRequest(
        operation.name(),
        tool(operation, through),
        operation.towardsRouter(),
        operation.depth().orElse(stock),
        through,
        template,
        operation.head().handling().deepestPass(),
        operation.station());
  }

  /** The kit's bit of that diameter that suits the cut best; for one not in the kit, the usual. */
  private SetupTool tool(Routed operation, boolean through) {
    Tooling tooling = operation.tool();
    boolean collar = tooling.follower() instanceof Follower.Collar;
    double depth = operation.depth().orElse(stock);
    Handling handling = operation.head().handling();
    List<Bit> fitting =
        kit.bits().stream()
            .filter(bit -> Math.abs(bit.diameter() - tooling.cutter().diameter()) < Tools.SAME_TOOL)
            .filter(bit -> collar || bit.bearing() != Bit.BearingSeat.NONE)
            .filter(bit -> collar || through || bit.bearing() != Bit.BearingSeat.TIP)
            .filter(bit -> handling.bearingAt().map(at -> at == bit.bearing()).orElse(true))
            .sorted(Comparator.comparingDouble(bit -> bit.cuttingLength().orElse(0)))
            .toList();
    Bit.BearingSeat seat = collar ? Bit.BearingSeat.NONE : Bit.BearingSeat.SHANK;
    OptionalDouble length = tooling.cuttingLength();
    OptionalDouble height = OptionalDouble.empty();
    if (!fitting.isEmpty()) {
      Bit bit =
          fitting.stream()
              .filter(one -> one.cuttingLength().orElse(0) >= depth)
              .findFirst()
              .orElse(fitting.get(fitting.size() - 1));
      seat = bit.bearing();
      height = bit.bearingHeight();
      // A length that is one of the kit's was not written by the maker: the bit chosen here counts.
      OptionalDouble told = length;
      boolean owned = fitting.stream().anyMatch(one -> one.cuttingLength().equals(told));
      length = length.isEmpty() || owned ? bit.cuttingLength() : length;
    }
    return new SetupTool(
        tooling.cutter(),
        length,
        tooling.follower(),
        handling.bearingAt().orElse(seat),
        handling.bearingHeight().isPresent() ? handling.bearingHeight() : height,
        handling.tube().isPresent()
            ? handling.tube()
            : tooling.follower() instanceof Follower.Collar guide
                ? guide.tube()
                : OptionalDouble.empty());
  }
}
