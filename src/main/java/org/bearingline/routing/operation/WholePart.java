package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Path;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.routing.Cautions;
import org.bearingline.routing.CutterRun;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Overcut;
import org.bearingline.routing.Passes;
import org.bearingline.routing.Proof;
import org.bearingline.routing.Reach;
import org.bearingline.routing.RoughLine;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;

/** All operations of a plan as one result for the whole part, drawn from face A. */
final class WholePart {

  private final OperationPlan plan;
  private final List<RoutingResult> results = new ArrayList<>();

  WholePart(OperationPlan plan) {
    this.plan = plan;
    plan.operations().forEach(one -> one.routing().ifPresent(results::add));
  }

  RoutingResult result(RoutingSettings usual, Kit kit) {
    Part whole = part();
    List<CutterRun> centre = new ArrayList<>();
    List<FeedArrow> feed = new ArrayList<>();
    for (RoutingResult one : results) {
      centre.addAll(one.cutterCentre());
      feed.addAll(one.feed());
    }
    LargestCutter largest = LargestCutter.of(whole);
    RoutingSettings settings = results.isEmpty() ? usual : results.get(0).settings();
    List<Bit> bits = kit.bits().stream().filter(bit -> largest.allows(bit.diameter())).toList();
    return new RoutingResult(
        whole,
        usual.thickness().isPresent()
            ? settings.withThickness(usual.thickness().getAsDouble())
            : settings,
        plan.templates().stream().map(PlannedTemplate::template).toList(),
        centre,
        reach(settings),
        largest,
        bits,
        roughLine(usual),
        proof(),
        passes(),
        feed,
        cautions(usual.units()));
  }

  /** The part with the openings and holes that its operations bring. */
  private Part part() {
    Part part = plan.part();
    List<Cavity> cavities = new ArrayList<>(part.cavities());
    List<Mark> marks = new ArrayList<>(part.marks());
    for (PlannedOperation planned : plan.operations()) {
      Operation operation = planned.operation();
      if (operation instanceof Hollow hollow
          && !(hollow instanceof InlayPlug)
          && cavities.stream().noneMatch(one -> one.name().equals(hollow.edge().of()))) {
        cavities.add(EdgeWork.cavity(hollow));
      }
      for (Hole hole : operation.holes()) {
        marks.add(new Mark.DrillCentre(hole.at(), hole.diameter(), hole.label()));
      }
    }
    return new Part(part.name(), part.about(), part.contour(), cavities, marks, part.notes());
  }

  private Reach reach(RoutingSettings settings) {
    List<Leftover> leftovers = new ArrayList<>();
    List<Overcut> overcuts = new ArrayList<>();
    List<String> cautions = new ArrayList<>();
    double tolerance = 0;
    for (RoutingResult one : results) {
      leftovers.addAll(one.reach().leftovers());
      overcuts.addAll(one.reach().overcuts());
      one.reach().cautions().stream().filter(c -> !cautions.contains(c)).forEach(cautions::add);
      tolerance = Math.max(tolerance, one.reach().tolerance());
    }
    leftovers.sort(
        Comparator.<Leftover>comparingDouble(one -> one.at().x())
            .thenComparingDouble(one -> -one.at().y()));
    List<Leftover> numbered = new ArrayList<>();
    for (Leftover one : leftovers) {
      numbered.add(
          new Leftover(
              numbered.size() + 1,
              one.edge(),
              one.piece(),
              one.at(),
              one.area(),
              one.depth(),
              one.insideRadius(),
              one.kind()));
    }
    return new Reach(
        settings.cutter(), settings.follower(), numbered, overcuts, tolerance, cautions);
  }

  private Optional<RoughLine> roughLine(RoutingSettings usual) {
    List<RoughLine> lines =
        results.stream().map(RoutingResult::roughLine).flatMap(Optional::stream).toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    // Two bits along the outer edge leave one saw line, not two.
    RoughLine outside =
        lines.stream().filter(line -> !line.paths().isEmpty()).findFirst().orElse(lines.get(0));
    List<Path> openings =
        lines.stream().flatMap(line -> line.openings().stream()).distinct().toList();
    double length =
        Stream.concat(outside.paths().stream(), openings.stream()).mapToDouble(Path::length).sum();
    double waste =
        outside.wasteArea()
            + lines.stream()
                .filter(line -> line != outside && line.paths().isEmpty())
                .mapToDouble(RoughLine::wasteArea)
                .sum();
    return Optional.of(
        new RoughLine(
            outside.allowance(),
            usual.blade(),
            outside.paths(),
            openings,
            length,
            waste,
            outside.bridged(),
            outside.outsideTurns(),
            lines.stream().flatMap(line -> line.notes().stream()).distinct().toList()));
  }

  /** The worst of all. */
  private Optional<Proof> proof() {
    return results.stream()
        .map(RoutingResult::proof)
        .flatMap(Optional::stream)
        .reduce(
            (a, b) -> {
              Proof worse = a.maxDeviation() >= b.maxDeviation() ? a : b;
              return new Proof(worse.maxDeviation(), worse.at(), a.samples() + b.samples());
            });
  }

  /** The deepest. */
  private Optional<Passes> passes() {
    return results.stream()
        .map(RoutingResult::passes)
        .flatMap(Optional::stream)
        .reduce((a, b) -> a.thickness() >= b.thickness() ? a : b);
  }

  /** Of every operation, also of those that need no template of their own. */
  private List<String> cautions(Units units) {
    List<List<String>> cautions = new ArrayList<>();
    for (PlannedOperation planned : plan.operations()) {
      Operation operation = planned.operation();
      if (planned.routing().isPresent()) {
        cautions.add(planned.routing().get().cautions());
      } else if (operation.tooling().isPresent()) {
        cautions.add(
            Cautions.of(
                plan.part(), operation.tooling().get().cutter(), operation.station(), units));
      }
    }
    return cautions.isEmpty() ? Cautions.sawn(units) : Cautions.joined(cautions);
  }
}
