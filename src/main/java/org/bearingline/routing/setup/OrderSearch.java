package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Finds the cheapest order by uniform-cost search. A state is what is done and what is set up. With
 * a setup in place everything it can do now is done at once: that costs nothing and closes no way,
 * so no cheaper order is lost. The search then only chooses the next setup.
 */
final class OrderSearch {

  /** More states than this are not weighed; the rest of the way is then taken greedily. */
  private static final int MOST_STATES = 200_000;

  private final List<OrderStep> steps;
  private final List<BitSet> waitsFor = new ArrayList<>();

  /** What is done and set up, and how it came about; {@code number} keeps ties in order. */
  private record State(BitSet done, Bench bench, OrderCost cost, List<Integer> order, int number) {}

  private record Key(BitSet done, Bench bench) {}

  OrderSearch(List<OrderStep> given) {
    steps = List.copyOf(given);
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < steps.size(); i++) {
      if (places.put(steps.get(i).name(), i) != null) {
        throw problem(steps.get(i), "stands here twice; give each operation its own name");
      }
    }
    for (OrderStep step : steps) {
      BitSet before = new BitSet();
      for (String name : step.after()) {
        Integer place = places.get(name);
        if (place == null) {
          throw problem(step, "is to come after " + name + ", which is no operation of this part");
        }
        before.set(place);
      }
      waitsFor.add(before);
    }
  }

  private static Problem problem(OrderStep step, String sentence) {
    return new Problem(Place.field(step.name()), "this operation " + sentence);
  }

  OperationOrder best() {
    checkForRings();
    if (steps.isEmpty()) {
      return new OperationOrder(List.of(), OrderCost.NOTHING, true);
    }
    PriorityQueue<State> open =
        new PriorityQueue<>(Comparator.comparing(State::cost).thenComparingInt(State::number));
    Map<Key, OrderCost> reached = new HashMap<>();
    int number = 0;
    open.add(new State(new BitSet(), Bench.EMPTY, OrderCost.NOTHING, List.of(), number++));
    while (true) {
      State state = open.remove();
      if (state.done().cardinality() == steps.size()) {
        return new OperationOrder(ordered(state), state.cost(), true);
      }
      if (reached.size() > MOST_STATES) {
        return greedy(state);
      }
      for (int chosen : available(state.done())) {
        State next = work(state, chosen, number++);
        Key key = new Key(next.done(), next.bench());
        OrderCost known = reached.get(key);
        if (known == null || next.cost().compareTo(known) < 0) {
          reached.put(key, next.cost());
          open.add(next);
        }
      }
    }
  }

  private void checkForRings() {
    BitSet done = new BitSet();
    while (true) {
      List<Integer> next = available(done);
      if (next.isEmpty()) {
        break;
      }
      next.forEach(done::set);
    }
    int stuck = done.nextClearBit(0);
    if (stuck < steps.size()) {
      sayRing(stuck, done);
    }
  }

  /** Goes back from what cannot be done to what it waits for, until that comes round again. */
  private void sayRing(int stuck, BitSet done) {
    BitSet seen = new BitSet();
    int here = stuck;
    while (!seen.get(here)) {
      seen.set(here);
      BitSet missing = (BitSet) waitsFor.get(here).clone();
      missing.andNot(done);
      here = missing.nextSetBit(0);
    }
    BitSet missing = (BitSet) waitsFor.get(here).clone();
    missing.andNot(done);
    throw problem(
        steps.get(here),
        "waits for "
            + steps.get(missing.nextSetBit(0)).name()
            + ", which in the end waits for it; take one of these wishes away");
  }

  /** The operations that can be done now, in the given order. */
  private List<Integer> available(BitSet done) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (isReady(i, done)) {
        found.add(i);
      }
    }
    return found;
  }

  private boolean isReady(int i, BitSet done) {
    if (done.get(i)) {
      return false;
    }
    BitSet missing = (BitSet) waitsFor.get(i).clone();
    missing.andNot(done);
    return missing.isEmpty();
  }

  /** Sets up for one operation and does everything that can be done so. */
  private State work(State from, int chosen, int number) {
    Bench bench = from.bench().readyFor(steps.get(chosen));
    OrderCost cost = from.cost().plus(from.bench(), bench);
    BitSet after = (BitSet) from.done().clone();
    List<Integer> longer = new ArrayList<>(from.order());
    boolean found = true;
    while (found) {
      found = false;
      for (int i = 0; i < steps.size(); i++) {
        if (isReady(i, after) && bench.isReadyFor(steps.get(i))) {
          after.set(i);
          longer.add(i);
          found = true;
        }
      }
    }
    return new State(after, bench, cost, List.copyOf(longer), number);
  }

  private OperationOrder greedy(State from) {
    State state = from;
    while (state.done().cardinality() < steps.size()) {
      State best = null;
      for (int chosen : available(state.done())) {
        State next = work(state, chosen, 0);
        if (best == null || next.cost().compareTo(best.cost()) < 0) {
          best = next;
        }
      }
      state = best;
    }
    return new OperationOrder(ordered(state), state.cost(), false);
  }

  private List<OrderStep> ordered(State state) {
    return state.order().stream().map(steps::get).toList();
  }
}
