package org.bearingline.routing.setup;

import java.util.Comparator;
import java.util.Optional;

/**
 * What an order costs, the first figure weighing most. Putting in the first bit is no change.
 *
 * @param bitChanges how often another bit is put in
 * @param followerChanges how often another bearing or collar is
 * @param turns how often the work is turned over
 */
public record OrderCost(int bitChanges, int followerChanges, int turns)
    implements Comparable<OrderCost> {

  static final OrderCost NOTHING = new OrderCost(0, 0, 0);

  private static final Comparator<OrderCost> WEIGHED =
      Comparator.comparingInt(OrderCost::bitChanges)
          .thenComparingInt(OrderCost::followerChanges)
          .thenComparingInt(OrderCost::turns);

  /** With the change from one state of the bench to the next added. */
  OrderCost plus(Bench from, Bench to) {
    return new OrderCost(
        bitChanges + change(from.bit(), to.bit()),
        followerChanges + change(from.follower(), to.follower()),
        turns + change(from.face(), to.face()));
  }

  private static int change(Optional<?> from, Optional<?> to) {
    return from.isEmpty() || from.equals(to) ? 0 : 1;
  }

  @Override
  public int compareTo(OrderCost other) {
    return WEIGHED.compare(this, other);
  }
}
