package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Units;
import org.bearingline.routing.grain.BackingBlock;
import org.bearingline.routing.grain.FeedPlan;
import org.bearingline.routing.grain.FeedStep;
import org.bearingline.routing.grain.ShortGrain;

/** Feed and grain on the card. */
final class GrainSection {

  private GrainSection() {}

  /** Empty where no routed edge meets fibres. */
  static Optional<Card.Section> of(GrainWork grain, Units units) {
    List<String> lines = new ArrayList<>();
    grain.plan().map(FeedPlan::sentences).ifPresent(lines::addAll);
    grain
        .plan()
        .filter(plan -> plan.steps().size() > 1)
        .ifPresent(plan -> plan.steps().forEach(step -> lines.add(step(step))));
    List<String> blocks =
        grain.plan().map(FeedPlan::blocks).orElse(List.of()).stream()
            .map(BackingBlock::sentence)
            .toList();
    lines.addAll(together(blocks, "Backing block", "Backing blocks"));
    Set<String> blind = new LinkedHashSet<>();
    grain.blind().forEach(reading -> blind.addAll(reading.blindSentences(units).subList(0, 1)));
    // What to do about it is the same for both faces, and told once after their shares.
    grain.blind().forEach(reading -> blind.addAll(reading.blindSentences(units)));
    lines.addAll(blind);
    List<String> places = grain.shortGrain().stream().map(ShortGrain::sentence).toList();
    lines.addAll(together(places, "Short grain", "Short grain"));
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(Card.Section.of("Feed and grain", lines));
  }

  /** Numbered sentences that say the same of several places, said once. */
  static List<String> together(List<String> sentences, String one, String many) {
    Map<String, List<String>> numbers = new LinkedHashMap<>();
    for (String sentence : sentences) {
      int colon = sentence.indexOf(": ");
      numbers
          .computeIfAbsent(sentence.substring(colon), unused -> new ArrayList<>())
          .add(sentence.substring(one.length() + 1, colon));
    }
    List<String> said = new ArrayList<>();
    numbers.forEach(
        (rest, of) ->
            said.add(
                of.size() == 1
                    ? one + " " + of.get(0) + rest
                    : many + " " + Words.list(of) + rest.replace("this corner", "each corner")));
    return said;
  }

  private static String step(FeedStep step) {
    return "Step " + step.number() + ": " + step.sentence();
  }
}
