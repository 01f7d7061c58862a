package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.length.Units;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;
import org.bearingline.routing.grain.Approach;
import org.bearingline.routing.grain.FeedPlan;
import org.bearingline.routing.grain.GrainClass;
import org.bearingline.routing.grain.GrainEdge;
import org.bearingline.routing.grain.GrainReading;
import org.bearingline.routing.grain.GrainSettings;
import org.bearingline.routing.grain.GrainShares;
import org.bearingline.routing.grain.GrainStretch;
import org.bearingline.routing.grain.ShortGrain;
import org.bearingline.routing.grain.ShortGrainSearch;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.InlayPlug;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Routed;

/**
 * How the routed edges of a part meet its fibres. What goes right through may be finished after
 * turning the work over; what is blind is cut from its own face only.
 *
 * @param plan of the edges right through; empty where there are none
 * @param turned names of those that the plan begins from another face than the job names: the bit
 *     then passes along the part the other way
 * @param blind the other edges, as read from the face each is cut from
 * @param shortGrain places that split easily
 */
record GrainWork(
    Optional<FeedPlan> plan,
    Set<String> turned,
    List<GrainReading> blind,
    List<ShortGrain> shortGrain) {

  GrainWork {
    turned = Set.copyOf(turned);
    blind = List.copyOf(blind);
    shortGrain = List.copyOf(shortGrain);
  }

  /** An edge, from which side the router comes, and whether the cut goes right through. */
  private record Cut(GrainEdge edge, Approach approach, boolean through) {}

  /** Of a part that names no operations, as the outer edge is met with that face up. */
  static Optional<GrainWork> of(Part part, Station station, Face face, Grain grain, Units units) {
    List<Cut> cuts = new ArrayList<>();
    Approach open = new Approach(station, face);
    Approach blind = new Approach(station, station == Station.TABLE ? face.other() : face);
    cuts.add(new Cut(new GrainEdge(Template.OUTSIDE_EDGE, part.contour()), open, true));
    for (Cavity cavity : part.cavities()) {
      boolean through = cavity.kind() == Cavity.Kind.THROUGH;
      cuts.add(
          new Cut(new GrainEdge(cavity.name(), cavity.contour()), through ? open : blind, through));
    }
    return of(cuts, part, grain, units);
  }

  /** Of a part with operations; {@code part} is the finished one. */
  static Optional<GrainWork> of(Part part, List<Operation> operations, Grain grain, Units units) {
    List<Cut> cuts = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Operation operation : operations) {
      if (operation instanceof Routed routed
          && !(routed instanceof EdgeGroove)
          && !(routed instanceof InlayPlug)
          && seen.add(routed.edge().of())) {
        cuts.add(
            new Cut(
                new GrainEdge(routed.edge().of(), routed.edge().contour()),
                new Approach(routed.station(), routed.faceUp()),
                routed.depth().isEmpty()));
      }
    }
    return of(cuts, part, grain, units);
  }

  private static Optional<GrainWork> of(List<Cut> cuts, Part part, Grain grain, Units units) {
    if (grain.degrees().isEmpty()) {
      return Optional.empty();
    }
    GrainSettings settings = GrainSettings.usual().withFibres(grain.degrees().getAsDouble());
    List<Cut> through = new ArrayList<>();
    Map<Approach, List<GrainEdge>> blind = new LinkedHashMap<>();
    Optional<Approach> first = Optional.empty();
    for (Cut cut : cuts) {
      // What goes through is planned as one where it is worked at the same place.
      if (cut.through() && first.map(a -> a.station() == cut.approach().station()).orElse(true)) {
        through.add(cut);
        first = first.or(() -> Optional.of(cut.approach()));
      } else {
        blind.computeIfAbsent(cut.approach(), unused -> new ArrayList<>()).add(cut.edge());
      }
    }
    List<GrainReading> readings = new ArrayList<>();
    blind.forEach((from, edges) -> readings.add(GrainReading.of(edges, settings, from)));
    Optional<FeedPlan> plan =
        first
            .map(
                from ->
                    FeedPlan.of(through.stream().map(Cut::edge).toList(), settings, from, units))
            .filter(made -> !made.steps().isEmpty());
    Set<String> turned = new HashSet<>();
    plan.ifPresent(
        made ->
            through.stream()
                .filter(
                    cut -> cut.approach().isWoodOnLeft() != made.first().approach().isWoodOnLeft())
                .forEach(cut -> turned.add(cut.edge().name())));
    return Optional.of(
        new GrainWork(
            plan, turned, readings, ShortGrainSearch.of(part.outline(), settings, units)));
  }

  /** The faces that lie up while an edge is worked, in order; none where the plan has it not. */
  List<Face> faces(String edge) {
    return plan.stream()
        .flatMap(made -> made.steps().stream())
        .filter(step -> step.stretches().stream().anyMatch(s -> s.edge().equals(edge)))
        .map(step -> step.approach().up())
        .distinct()
        .toList();
  }

  /** The arrow as the bit passes first: the other way where the plan begins from another face. */
  FeedArrow first(FeedArrow arrow) {
    return turned.contains(arrow.edge()) ? arrow.reversed() : arrow;
  }

  /** Every reading, those of the first face for what goes through. */
  List<GrainReading> readings() {
    List<GrainReading> all = new ArrayList<>();
    plan.ifPresent(made -> all.add(made.first()));
    all.addAll(blind);
    return all;
  }

  /** What is met along edges of the given names. */
  Set<GrainClass> classes(List<String> edges) {
    Set<GrainClass> met = new HashSet<>();
    for (GrainReading reading : readings()) {
      reading.stretches().stream()
          .filter(stretch -> edges.contains(stretch.edge()))
          .forEach(stretch -> met.add(stretch.grain()));
    }
    return met;
  }

  /** How much of all routed edge is in each class. */
  GrainShares shares() {
    Map<GrainClass, Double> lengths = new EnumMap<>(GrainClass.class);
    for (GrainClass grain : GrainClass.values()) {
      lengths.put(
          grain, readings().stream().mapToDouble(reading -> reading.shares().length(grain)).sum());
    }
    return new GrainShares(lengths);
  }

  /** Whether an arrow stands at a stretch that tears and waits for the other face. */
  boolean waitsAt(FeedArrow arrow) {
    return plan.map(FeedPlan::turnsWork).orElse(false) && tearsAt(arrow);
  }

  private boolean tearsAt(FeedArrow arrow) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean tears = false;
    for (GrainReading reading : readings()) {
      for (GrainStretch stretch : reading.stretches()) {
        if (stretch.edge().equals(arrow.edge())) {
          for (Primitive piece : stretch.path().primitives()) {
            double distance = piece.distanceTo(arrow.at());
            if (distance < nearest) {
              nearest = distance;
              tears = stretch.grain() == GrainClass.TEARS;
            }
          }
        }
      }
    }
    return tears;
  }
}
