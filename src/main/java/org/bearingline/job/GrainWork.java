package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.length.Units;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.routing.FeedArrow;
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
import org.bearingline.routing.grain.Station;
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
 * @param blind the other edges, as read from the face each is cut from
 * @param shortGrain places that split easily
 */
record GrainWork(Optional<FeedPlan> plan, List<GrainReading> blind, List<ShortGrain> shortGrain) {

  GrainWork {
    blind = List.copyOf(blind);
    shortGrain = List.copyOf(shortGrain);
  }

  /** An edge, the face it is cut from, and whether the cut goes right through. */
  private record Cut(GrainEdge edge, Face face, boolean through) {}

  /** Of a part that names no operations: all from face A. */
  static Optional<GrainWork> of(Part part, Grain grain, Units units) {
    List<Cut> cuts = new ArrayList<>();
    cuts.add(new Cut(new GrainEdge(Template.OUTSIDE_EDGE, part.contour()), Face.A, true));
    for (Cavity cavity : part.cavities()) {
      cuts.add(
          new Cut(
              new GrainEdge(cavity.name(), cavity.contour()),
              Face.A,
              cavity.kind() == Cavity.Kind.THROUGH));
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
                routed.face(),
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
    List<GrainEdge> through = new ArrayList<>();
    Map<Face, List<GrainEdge>> blind = new EnumMap<>(Face.class);
    Optional<Face> first = Optional.empty();
    for (Cut cut : cuts) {
      if (cut.through()) {
        through.add(cut.edge());
        first = first.or(() -> Optional.of(cut.face()));
      } else {
        blind.computeIfAbsent(cut.face(), unused -> new ArrayList<>()).add(cut.edge());
      }
    }
    List<GrainReading> readings = new ArrayList<>();
    blind.forEach((face, edges) -> readings.add(GrainReading.of(edges, settings, from(face))));
    Optional<FeedPlan> plan =
        first
            .map(face -> FeedPlan.of(through, settings, from(face), units))
            .filter(made -> !made.steps().isEmpty());
    return Optional.of(
        new GrainWork(plan, readings, ShortGrainSearch.of(part.outline(), settings, units)));
  }

  private static Approach from(Face face) {
    return new Approach(Station.HAND_HELD, face);
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
  boolean tearsAt(FeedArrow arrow) {
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
