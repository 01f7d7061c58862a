package org.bearingline.routing.setup;

import java.util.List;
import java.util.Objects;

/**
 * An order of operations that changes bits least; among such orders the one with the fewest changes
 * of bearing or collar, then of face, then the one nearest to the given order.
 *
 * @param steps every operation once
 * @param cost what it takes
 * @param proven whether no order costs less; false only for so many operations that not every order
 *     was weighed
 */
public record OperationOrder(List<OrderStep> steps, OrderCost cost, boolean proven) {

  public OperationOrder {
    steps = List.copyOf(steps);
    Objects.requireNonNull(cost);
  }

  /**
   * The order.
   *
   * @throws org.bearingline.problem.Problem where operations wait for each other or for one that is
   *     not there
   */
  public static OperationOrder of(List<OrderStep> steps) {
    return new OrderSearch(steps).best();
  }

  /** The order in words, one sentence. */
  public String sentence() {
    StringBuilder words = new StringBuilder("Order of work: ");
    for (int i = 0; i < steps.size(); i++) {
      words.append(i == 0 ? "" : "; ").append(i + 1).append(" ").append(steps.get(i).name());
      words.append(" (").append(steps.get(i).bit().orElse("drill")).append(", face ");
      words.append(steps.get(i).face()).append(")");
    }
    words.append(": ").append(count(cost.bitChanges(), "change of bit", "changes of bit"));
    words.append(", ");
    words.append(count(cost.turns(), "turning of the work", "turnings of the work"));
    return words.append(proven ? ", the fewest there can be." : ".").toString();
  }

  private static String count(int n, String one, String many) {
    return n + " " + (n == 1 ? one : many);
  }
}
