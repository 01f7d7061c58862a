package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.bearingline.length.Units;

/** Puts the stretches into steps. */
final class FeedPlanner {

  private final List<GrainEdge> edges;
  private final GrainSettings settings;
  private final Units units;
  private final List<StepDraft> drafts = new ArrayList<>();
  private final List<GrainStretch> neverClean = new ArrayList<>();

  FeedPlanner(List<GrainEdge> edges, GrainSettings settings, Units units) {
    this.edges = List.copyOf(edges);
    this.settings = settings;
    this.units = units;
  }

  FeedPlan plan(Approach wanted) {
    boolean begins = beginsFromTheOtherFace(wanted);
    Approach approach = begins ? wanted.turnedOver() : wanted;
    GrainReading first = read(approach, edge -> edge.isOpenTo(approach.towardsRouter()));
    Approach over = approach.turnedOver();
    GrainReading turned = read(over, edge -> edge.isOpenTo(over.towardsRouter()));
    Set<String> open = new HashSet<>();
    edges.stream().filter(edge -> edge.only().isEmpty()).forEach(edge -> open.add(edge.name()));

    endGrain(first, stretch -> true);
    along(first, stretch -> true, "what runs along and with the grain");
    tears(first, stretch -> !open.contains(stretch.edge()));
    List<GrainStretch> each = new ArrayList<>(first.stretches());
    turned.stretches().stream().filter(s -> !open.contains(s.edge())).forEach(each::add);
    if (isHardlyWorthTurning(first, GrainShares.of(each))) {
      little(first);
    } else {
      Predicate<GrainStretch> waited =
          stretch -> !open.contains(stretch.edge()) || stretch.grain() == GrainClass.CLEAN;
      endGrain(turned, stretch -> !open.contains(stretch.edge()));
      along(turned, waited, "what now runs with the grain");
      tears(turned, stretch -> !open.contains(stretch.edge()));
    }

    FeedWords words = new FeedWords(GrainShares.of(each), units);
    List<String> sentences = new ArrayList<>();
    if (!each.isEmpty()) {
      sentences.add(words.shares(approach));
    }
    if (begins) {
      sentences.add(words.beginsFrom(approach));
    }
    if (!neverClean.isEmpty()) {
      sentences.add(words.neverClean(neverClean));
    }
    return new FeedPlan(first, turned, words.steps(drafts), neverClean, sentences);
  }

  /**
   * Whether so little tears that few would turn the work over for it, and nothing else asks for the
   * other face.
   */
  private boolean isHardlyWorthTurning(GrainReading first, GrainShares all) {
    boolean bound = edges.stream().anyMatch(e -> !e.isOpenTo(first.approach().towardsRouter()));
    double tears =
        choose(first, stretch -> isOpen(stretch.edge()), GrainClass.TEARS).stream()
            .mapToDouble(GrainStretch::length)
            .sum();
    return !bound
        && tears > 0
        && tears < GrainLimits.shipped().number("little-share") * all.total();
  }

  /** What would be cut clean after turning, from the first face all the same. */
  private void little(GrainReading first) {
    List<GrainStretch> chosen = choose(first, stretch -> isOpen(stretch.edge()), GrainClass.TEARS);
    if (!chosen.isEmpty()) {
      drafts.add(
          new StepDraft(
              first.approach(),
              chosen,
              List.of(),
              "the little that runs against the grain",
              " in light passes with a sharp bit, for which turning the work over is hardly worth"
                  + " while"));
    }
  }

  private boolean isOpen(String edge) {
    return edges.stream().anyMatch(e -> e.name().equals(edge) && e.only().isEmpty());
  }

  /** Whether nothing can be done well from the wanted face, or nothing at all. */
  private boolean beginsFromTheOtherFace(Approach wanted) {
    boolean bound =
        edges.stream().anyMatch(e -> e.only().equals(Optional.of(wanted.towardsRouter())));
    if (bound) {
      return false;
    }
    GrainShares shares = read(wanted, edge -> edge.isOpenTo(wanted.towardsRouter())).shares();
    boolean onlyTears = shares.length(GrainClass.CLEAN) == 0 && shares.length(GrainClass.TEARS) > 0;
    boolean nothing = shares.total() == 0 && edges.stream().anyMatch(e -> e.only().isPresent());
    return onlyTears || nothing;
  }

  private GrainReading read(Approach approach, Predicate<GrainEdge> which) {
    return GrainReading.of(edges.stream().filter(which).toList(), settings, approach);
  }

  private void endGrain(GrainReading reading, Predicate<GrainStretch> which) {
    List<GrainStretch> chosen = choose(reading, which, GrainClass.END_GRAIN);
    if (chosen.isEmpty()) {
      return;
    }
    Set<String> names = new HashSet<>();
    chosen.forEach(stretch -> names.add(stretch.edge()));
    List<GrainEdge> here = edges.stream().filter(edge -> names.contains(edge.name())).toList();
    int before = drafts.stream().mapToInt(draft -> draft.blocks().size()).sum();
    List<BackingBlock> blocks = BackingBlocks.of(here, settings, reading.approach(), before);
    drafts.add(
        new StepDraft(reading.approach(), chosen, blocks, "the end grain", " in light passes"));
    neverClean.addAll(chosen);
  }

  private void along(GrainReading reading, Predicate<GrainStretch> which, String what) {
    List<GrainStretch> chosen = choose(reading, which, GrainClass.ALONG, GrainClass.CLEAN);
    if (!chosen.isEmpty()) {
      drafts.add(new StepDraft(reading.approach(), chosen, List.of(), what, ""));
    }
  }

  /** What tears and cannot be turned over, for it does not go through the wood. */
  private void tears(GrainReading reading, Predicate<GrainStretch> which) {
    List<GrainStretch> chosen = choose(reading, which, GrainClass.TEARS);
    if (!chosen.isEmpty()) {
      drafts.add(
          new StepDraft(
              reading.approach(),
              chosen,
              List.of(),
              "what runs against the grain and cannot be reached from the other face",
              " in light passes"));
      neverClean.addAll(chosen);
    }
  }

  private static List<GrainStretch> choose(
      GrainReading reading, Predicate<GrainStretch> which, GrainClass... classes) {
    Set<GrainClass> wanted = Set.of(classes);
    return reading.stretches().stream()
        .filter(stretch -> wanted.contains(stretch.grain()) && which.test(stretch))
        .toList();
  }
}
