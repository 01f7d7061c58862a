package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    grain
        .plan()
        .ifPresent(plan -> plan.blocks().stream().map(BackingBlock::sentence).forEach(lines::add));
    grain.blind().forEach(reading -> lines.addAll(reading.blindSentences(units)));
    grain.shortGrain().stream().map(ShortGrain::sentence).forEach(lines::add);
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(Card.Section.of("Feed and grain", lines));
  }

  private static String step(FeedStep step) {
    return "Step " + step.number() + ": " + step.sentence();
  }
}
