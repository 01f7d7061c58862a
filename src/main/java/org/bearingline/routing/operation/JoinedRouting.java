package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;
import org.bearingline.routing.Cautions;
import org.bearingline.routing.CutterRun;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.Groove;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Overcut;
import org.bearingline.routing.Passes;
import org.bearingline.routing.Proof;
import org.bearingline.routing.Reach;
import org.bearingline.routing.RoughLine;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Template;

/** What routing found of several operations, as one: leftovers and saw lines numbered anew. */
public final class JoinedRouting {

  private final List<Leftover> leftovers = new ArrayList<>();
  private final List<Overcut> overcuts = new ArrayList<>();
  private final List<CutterRun> runs = new ArrayList<>();
  private final List<FeedArrow> arrows = new ArrayList<>();
  private final List<RoughLine> lines = new ArrayList<>();
  private final Set<String> reachCautions = new LinkedHashSet<>();
  private final List<List<String>> cautions = new ArrayList<>();
  private Optional<Proof> proof = Optional.empty();
  private Optional<Passes> passes = Optional.empty();
  private Optional<RoutingSettings> settings = Optional.empty();
  private double tolerance;

  private JoinedRouting() {}

  /**
   * The whole of it.
   *
   * @param part what is drawn and measured
   * @param operations whose findings are joined; the edge's bit, else the first one's, counts as
   *     the part's
   * @param templates that make them
   * @param usual stands where nothing is routed along a template
   */
  public static RoutingResult of(
      Part part,
      List<PlannedOperation> operations,
      List<Template> templates,
      RoutingSettings usual,
      Kit kit) {
    JoinedRouting joined = new JoinedRouting();
    operations.stream()
        .filter(one -> one.operation() instanceof EdgeOperation)
        .forEach(one -> joined.add(one, part, usual.units()));
    operations.stream()
        .filter(one -> !(one.operation() instanceof EdgeOperation))
        .forEach(one -> joined.add(one, part, usual.units()));
    return joined.result(part, templates, usual, kit);
  }

  private RoutingResult result(
      Part part, List<Template> templates, RoutingSettings usual, Kit kit) {
    LargestCutter largest = LargestCutter.of(part);
    RoutingSettings first = settings.orElse(usual);
    RoutingSettings told =
        usual.thickness().isPresent()
            ? first.withThickness(usual.thickness().getAsDouble())
            : first;
    return new RoutingResult(
        part,
        told,
        templates,
        runs,
        new Reach(
            told.cutter(),
            told.follower(),
            numbered(),
            overcuts,
            tolerance,
            List.copyOf(reachCautions)),
        largest,
        kit.bits().stream().filter(bit -> largest.allows(bit.diameter())).toList(),
        roughLine(),
        proof,
        passes,
        arrows,
        cautions.isEmpty() ? Cautions.sawn(usual.units()) : Cautions.joined(cautions));
  }

  private void add(PlannedOperation planned, Part part, Units units) {
    Operation operation = planned.operation();
    if (planned.routing().isEmpty()) {
      // A groove along the finished edge has no routing of its own, and its cutter its dangers.
      operation
          .tooling()
          .map(tool -> Cautions.of(part, tool.cutter(), operation.station(), guide(planned), units))
          .ifPresent(cautions::add);
      return;
    }
    RoutingResult one = planned.routing().get();
    settings = settings.or(() -> Optional.of(one.settings()));
    tolerance = Math.max(tolerance, one.reach().tolerance());
    leftovers.addAll(one.reach().leftovers());
    overcuts.addAll(one.reach().overcuts());
    reachCautions.addAll(one.reach().cautions());
    runs.addAll(one.cutterCentre());
    boolean fromB = operation.towardsRouter() == Face.B;
    for (FeedArrow arrow : one.feed()) {
      // Seen from face A, a router that face B looks at travels the other way.
      arrows.add(fromB ? arrow.reversed() : arrow);
    }
    // Two bits along the same edge leave one saw line, not two.
    one.roughLine().filter(line -> !isThere(line)).ifPresent(lines::add);
    cautions.add(one.cautions());
    one.proof().ifPresent(this::add);
    if (one.passes().isPresent()
        && passes.map(Passes::thickness).orElse(0.0) < one.passes().get().thickness()) {
      passes = one.passes();
    }
  }

  private static Cautions.Guide guide(PlannedOperation planned) {
    if (planned.template().isPresent()) {
      return Cautions.Guide.TEMPLATE;
    }
    return planned.groove().map(Groove::isStraight).orElse(false)
        ? Cautions.Guide.STRAIGHT_EDGE
        : Cautions.Guide.CURVED_EDGE;
  }

  private boolean isThere(RoughLine line) {
    return lines.stream()
        .anyMatch(
            other ->
                line.openings().isEmpty()
                    ? !other.paths().isEmpty()
                    : other.openings().equals(line.openings()));
  }

  /** The worst of all. */
  private void add(Proof one) {
    Proof worse = proof.filter(other -> other.maxDeviation() > one.maxDeviation()).orElse(one);
    int samples = one.samples() + proof.map(Proof::samples).orElse(0);
    proof = Optional.of(new Proof(worse.maxDeviation(), worse.at(), samples));
  }

  /** In reading order from the left. */
  private List<Leftover> numbered() {
    leftovers.sort(
        Comparator.<Leftover>comparingDouble(one -> one.at().x())
            .thenComparingDouble(one -> -one.at().y()));
    List<Leftover> numbered = new ArrayList<>();
    for (Leftover left : leftovers) {
      numbered.add(
          new Leftover(
              numbered.size() + 1,
              left.edge(),
              left.piece(),
              left.at(),
              left.area(),
              left.depth(),
              left.insideRadius(),
              left.kind()));
    }
    return numbered;
  }

  private Optional<RoughLine> roughLine() {
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    List<Path> paths = new ArrayList<>();
    List<Path> openings = new ArrayList<>();
    List<RoughLine.Bridge> bridged = new ArrayList<>();
    List<Point> turns = new ArrayList<>();
    Set<String> notes = new LinkedHashSet<>();
    double length = 0;
    double waste = 0;
    for (RoughLine line : lines) {
      paths.addAll(line.paths());
      openings.addAll(line.openings());
      for (RoughLine.Bridge bridge : line.bridged()) {
        bridged.add(new RoughLine.Bridge(bridged.size() + 1, bridge.at(), bridge.extraDepth()));
      }
      turns.addAll(line.outsideTurns());
      notes.addAll(line.notes());
      length += line.length();
      waste += line.wasteArea();
    }
    RoughLine first = lines.get(0);
    return Optional.of(
        new RoughLine(
            first.allowance(),
            first.blade(),
            paths,
            openings,
            length,
            waste,
            bridged,
            turns,
            List.copyOf(notes)));
  }
}
