package org.bearingline.routing.grain;

import java.util.List;
import java.util.Objects;

/**
 * One step of a plan: what is routed with the work lying one way.
 *
 * @param number from 1
 * @param approach from which side the router comes
 * @param turnsWork whether the work is turned over first
 * @param stretches what is routed, in the order and direction of travel of this approach
 * @param blocks backing blocks to hold in this step
 * @param sentence for the card
 */
public record FeedStep(
    int number,
    Approach approach,
    boolean turnsWork,
    List<GrainStretch> stretches,
    List<BackingBlock> blocks,
    String sentence) {

  public FeedStep {
    Objects.requireNonNull(approach);
    stretches = List.copyOf(stretches);
    blocks = List.copyOf(blocks);
    Objects.requireNonNull(sentence);
  }

  /** mm of edge routed in this step. */
  public double length() {
    return stretches.stream().mapToDouble(GrainStretch::length).sum();
  }
}
