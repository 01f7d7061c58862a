package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.pdf.Card;
import org.bearingline.routing.grain.BackingBlock;
import org.bearingline.routing.grain.FeedPlan;
import org.bearingline.routing.grain.ShortGrain;

/** Feed and grain on the card. */
final class GrainSection {

  private GrainSection() {}

  static Card.Section of(GrainWork grain) {
    List<String> lines = new ArrayList<>();
    grain.plan().map(FeedPlan::sentences).ifPresent(lines::addAll);
    grain
        .plan()
        .ifPresent(plan -> plan.blocks().stream().map(BackingBlock::sentence).forEach(lines::add));
    grain.shortGrain().stream().map(ShortGrain::sentence).forEach(lines::add);
    return Card.Section.of("Feed and grain", lines);
  }
}
