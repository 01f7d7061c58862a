package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** Puts the stretches into steps and words. */
final class FeedPlanner {

  private final List<GrainEdge> edges;
  private final GrainSettings settings;
  private final Units units;
  private final List<FeedStep> steps = new ArrayList<>();
  private final List<String> sentences = new ArrayList<>();

  FeedPlanner(List<GrainEdge> edges, GrainSettings settings, Units units) {
    this.edges = List.copyOf(edges);
    this.settings = settings;
    this.units = units;
  }

  FeedPlan plan(Approach wanted) {
    Approach approach = wanted;
    GrainReading first = GrainReading.of(edges, settings, approach);
    boolean onlyTears =
        first.shares().length(GrainClass.CLEAN) == 0 && first.shares().length(GrainClass.TEARS) > 0;
    if (onlyTears) {
      approach = wanted.turnedOver();
      first = GrainReading.of(edges, settings, approach);
    }
    GrainReading turned = GrainReading.of(edges, settings, approach.turnedOver());
    if (!first.stretches().isEmpty()) {
      sentences.add(shares(first));
    }
    if (onlyTears) {
      sentences.add(
          "Lay the work with face "
              + approach.up()
              + " up from the start: with face "
              + wanted.up()
              + " up every slope of the grain would tear.");
    }
    List<GrainStretch> endGrain = of(first, EnumSet.of(GrainClass.END_GRAIN));
    if (!endGrain.isEmpty()) {
      endGrain(approach, endGrain);
    }
    List<GrainStretch> fromFirst = of(first, EnumSet.of(GrainClass.ALONG, GrainClass.CLEAN));
    if (!fromFirst.isEmpty()) {
      String words =
          FeedWords.lead(steps.size())
              + FeedWords.lying(approach)
              + ", "
              + FeedWords.amount(fromFirst, units)
              + " along and with the grain.";
      steps.add(step(approach, false, fromFirst, List.of(), words));
    }
    List<GrainStretch> afterTurning = of(turned, EnumSet.of(GrainClass.CLEAN));
    if (!afterTurning.isEmpty()) {
      steps.add(
          step(
              approach.turnedOver(),
              true,
              afterTurning,
              List.of(),
              FeedWords.turning(approach.turnedOver(), FeedWords.amount(afterTurning, units))));
    }
    return new FeedPlan(first, turned, steps, endGrain, sentences);
  }

  private void endGrain(Approach approach, List<GrainStretch> endGrain) {
    List<BackingBlock> blocks = BackingBlocks.of(edges, settings, approach);
    String amount = FeedWords.amount(endGrain, units);
    String words =
        FeedWords.lead(steps.size())
            + FeedWords.lying(approach)
            + ", "
            + amount
            + " of end grain in light passes"
            + (blocks.isEmpty()
                ? "."
                : blocks.size() == 1
                    ? ", with the backing block held where the cutter leaves it."
                    : ", with the backing blocks held where the cutter leaves it.");
    steps.add(step(approach, false, endGrain, blocks, words));
    sentences.add(
        "End grain is cut clean from neither face ("
            + amount
            + "): saw it close, within "
            + Length.printAtMost(GrainLimits.shipped().mm("end-grain-allowance"), units)
            + " of the line, and take it off in light passes.");
  }

  private FeedStep step(
      Approach approach,
      boolean turns,
      List<GrainStretch> stretches,
      List<BackingBlock> blocks,
      String words) {
    return new FeedStep(steps.size() + 1, approach, turns, stretches, blocks, words);
  }

  private static List<GrainStretch> of(GrainReading reading, Set<GrainClass> wanted) {
    return reading.stretches().stream().filter(s -> wanted.contains(s.grain())).toList();
  }

  private String shares(GrainReading reading) {
    StringBuilder words = new StringBuilder("Of ");
    words.append(Length.print(reading.shares().total(), units)).append(" of routed edge, ");
    words.append(FeedWords.lying(reading.approach())).append(", ");
    List<String> each = new ArrayList<>();
    for (GrainClass grain : GrainClass.values()) {
      if (reading.shares().length(grain) > 0) {
        double percent = 100 * reading.shares().share(grain);
        each.add(String.format(Locale.ROOT, "%.0f %% is %s", percent, grain.words()));
      }
    }
    return words.append(String.join(", ", each)).append(".").toString();
  }
}
