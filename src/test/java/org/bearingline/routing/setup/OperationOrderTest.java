package org.bearingline.routing.setup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bearingline.Seed;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.part.Contour;
import org.bearingline.problem.Problem;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.EdgeOperation;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.Ledge;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Recess;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.ThroughOpening;
import org.bearingline.routing.operation.Tooling;
import org.junit.jupiter.api.Test;

/** The order found against every order there is. */
class OperationOrderTest {

  private static OrderStep step(String name, String bit, Face face, String... after) {
    Optional<String> tool = bit.isEmpty() ? Optional.empty() : Optional.of(bit);
    return new OrderStep(name, tool, tool, face, Set.of(after));
  }

  private static List<String> names(OperationOrder order) {
    return order.steps().stream().map(OrderStep::name).toList();
  }

  @Test
  void operationsOfOneBitAreDoneTogether() {
    OperationOrder order =
        OperationOrder.of(
            List.of(
                step("recess", "big", Face.A),
                step("edge", "small", Face.A),
                step("slot", "big", Face.A)));
    assertEquals(List.of("recess", "slot", "edge"), names(order));
    assertEquals(1, order.cost().bitChanges());
  }

  @Test
  void precedenceMayCostAChange() {
    OperationOrder order =
        OperationOrder.of(
            List.of(
                step("a", "big", Face.A),
                step("b", "small", Face.A, "a"),
                step("c", "big", Face.A, "b")));
    assertEquals(List.of("a", "b", "c"), names(order));
    assertEquals(2, order.cost().bitChanges());
  }

  @Test
  void drillingLeavesTheBitInTheRouter() {
    OperationOrder order =
        OperationOrder.of(
            List.of(
                step("edge", "big", Face.A),
                step("cups", "", Face.A, "edge"),
                step("recess", "big", Face.A, "cups")));
    assertEquals(0, order.cost().bitChanges());
  }

  @Test
  void wishesThatGoInARingAreRefused() {
    List<OrderStep> ring =
        List.of(
            step("free", "x", Face.A),
            step("a", "x", Face.A, "c"),
            step("b", "x", Face.A, "a"),
            step("c", "x", Face.A, "b"),
            step("d", "x", Face.A, "a"));
    String words = assertThrows(Problem.class, () -> OperationOrder.of(ring)).spoken();
    assertTrue(words.contains("a: this operation waits for c"), words);
    assertThrows(Problem.class, () -> OperationOrder.of(List.of(step("a", "x", Face.A, "gone"))));
    assertThrows(
        Problem.class,
        () -> OperationOrder.of(List.of(step("a", "x", Face.A), step("a", "y", Face.A))));
  }

  @Provide
  Arbitrary<List<OrderStep>> jobs() {
    Arbitrary<String> bits = Arbitraries.of("", "big", "small", "round");
    Arbitrary<String> followers = Arbitraries.of("bearing", "collar");
    Arbitrary<Set<Integer>> earlier = Arbitraries.integers().between(0, 6).set().ofMaxSize(2);
    return Combinators.combine(bits, followers, Arbitraries.of(Face.class), earlier)
        .as(Wish::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(7)
        .map(OperationOrderTest::job);
  }

  private record Wish(String bit, String follower, Face face, Set<Integer> earlier) {}

  private static List<OrderStep> job(List<Wish> wishes) {
    List<OrderStep> steps = new ArrayList<>();
    for (int i = 0; i < wishes.size(); i++) {
      Wish wish = wishes.get(i);
      Set<String> after = new TreeSet<>();
      for (int other : wish.earlier()) {
        // Only backwards in a shuffled sense, so that there is no ring.
        if (other < wishes.size() && (other * 5) % 7 < (i * 5) % 7) {
          after.add("step " + other);
        }
      }
      boolean drilled = wish.bit().isEmpty();
      steps.add(
          new OrderStep(
              "step " + i,
              drilled ? Optional.empty() : Optional.of(wish.bit()),
              drilled ? Optional.empty() : Optional.of(wish.follower()),
              wish.face(),
              after));
    }
    return steps;
  }

  @Property(tries = 150, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void noOrderCostsLess(@ForAll("jobs") List<OrderStep> job) {
    OperationOrder order = OperationOrder.of(job);
    assertTrue(order.proven());
    assertEquals(Set.copyOf(job), Set.copyOf(order.steps()));
    assertEquals(job.size(), order.steps().size());
    int[] told = {order.cost().bitChanges(), order.cost().followerChanges(), order.cost().turns()};
    assertArrayEquals(walked(order.steps()), told, "cost as told");
    assertArrayEquals(least(new ArrayList<>(), job), told, "least of all orders");
  }

  private static int[] walked(List<OrderStep> order) {
    Set<String> done = new HashSet<>();
    String bit = null;
    String follower = null;
    Face face = null;
    int[] cost = new int[3];
    for (OrderStep step : order) {
      assertTrue(done.containsAll(step.after()), "precedence holds");
      done.add(step.name());
      if (step.bit().isPresent()) {
        cost[0] += bit == null || bit.equals(step.bit().get()) ? 0 : 1;
        cost[1] += follower == null || follower.equals(step.follower().get()) ? 0 : 1;
        bit = step.bit().get();
        follower = step.follower().get();
      }
      cost[2] += face == null || face == step.face() ? 0 : 1;
      face = step.face();
    }
    return cost;
  }

  private static int[] least(List<OrderStep> begun, List<OrderStep> job) {
    if (begun.size() == job.size()) {
      return walked(begun);
    }
    Set<String> done = new HashSet<>();
    begun.forEach(step -> done.add(step.name()));
    List<int[]> costs = new ArrayList<>();
    for (OrderStep step : job) {
      if (!done.contains(step.name()) && done.containsAll(step.after())) {
        List<OrderStep> longer = new ArrayList<>(begun);
        longer.add(step);
        costs.add(least(longer, job));
      }
    }
    return costs.stream().min(Comparator.comparing(c -> c, Arrays::compare)).orElseThrow();
  }

  @Test
  void theUsualOrderGoesFromInsideOut() {
    Contour contour = Contour.routed(Loop.rectangle(new Bounds(0, 0, 300, 200)));
    Contour hole = Contour.routed(Loop.rectangle(new Bounds(100, 80, 200, 120)));
    Tooling half = Tooling.flush(new Cutter(12.7));
    Target edge = Target.outside(contour);
    Target opening = Target.opening("opening", hole);
    List<Operation> operations =
        List.of(
            new EdgeGroove(
                Head.of("groove", Face.A),
                new SlotCutter(new Cutter(50.8), new Follower.Bearing(25.4), 6),
                edge,
                GrooveExtent.through(),
                EdgeGroove.Rides.WORK,
                6,
                OptionalDouble.empty()),
            new EdgeOperation(Head.of("outline", Face.A), half, edge, OptionalDouble.empty()),
            new Ledge(Head.of("ledge", Face.A), half, opening, 6),
            new ThroughOpening(Head.of("opening", Face.A), half, opening),
            new Recess(Head.of("pull", Face.B), half, opening, 9));
    OperationOrder order = OperationOrder.of(Precedence.steps(operations, Units.INCH));
    List<String> names = names(order);
    // A woodworking programme's tip sheet on plates: the recess first, then through with a small
    // bit.
    assertTrue(names.indexOf("ledge") < names.indexOf("opening"));
    assertTrue(names.indexOf("opening") < names.indexOf("outline"));
    assertTrue(names.indexOf("pull") < names.indexOf("outline"));
    assertTrue(names.indexOf("outline") < names.indexOf("groove"));
    assertEquals(1, order.cost().bitChanges(), "the slot cutter is another tool");
    assertEquals(3, Precedence.reasons(operations).size());
    assertTrue(order.sentence().contains("1 change of bit"), order.sentence());
  }
}
