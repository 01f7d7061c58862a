package org.bearingline.routing.setup;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.bearingline.routing.operation.Face;

/**
 * One operation as its order sees it.
 *
 * @param name unique among the operations
 * @param bit which bit is in the router, in words, equal words being one bit; empty for what is
 *     drilled
 * @param follower what guides it, likewise
 * @param face the face it is worked from
 * @param after names of the operations that must be done before
 */
public record OrderStep(
    String name, Optional<String> bit, Optional<String> follower, Face face, Set<String> after) {

  public OrderStep {
    Objects.requireNonNull(name);
    Objects.requireNonNull(bit);
    Objects.requireNonNull(follower);
    Objects.requireNonNull(face);
    after = Set.copyOf(after);
  }
}
