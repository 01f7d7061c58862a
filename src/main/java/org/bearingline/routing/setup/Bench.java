package org.bearingline.routing.setup;

import java.util.Optional;
import org.bearingline.routing.operation.Face;

/**
 * What is set up between two operations; all empty before the first.
 *
 * @param bit in the router
 * @param follower on it
 * @param face that lies up
 */
record Bench(Optional<String> bit, Optional<String> follower, Optional<Face> face) {

  static final Bench EMPTY = new Bench(Optional.empty(), Optional.empty(), Optional.empty());

  /** Set up for a step; what is drilled leaves the router as it is. */
  Bench readyFor(OrderStep step) {
    return new Bench(
        step.bit().isPresent() ? step.bit() : bit,
        step.bit().isPresent() ? step.follower() : follower,
        Optional.of(step.face()));
  }

  boolean isReadyFor(OrderStep step) {
    return readyFor(step).equals(this);
  }
}
