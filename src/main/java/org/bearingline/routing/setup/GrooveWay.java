package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Passes;

/**
 * A slot cutter of thickness t and diameter D: a groove w wide takes the fewest heights that
 * overlap, ⌈w / t⌉, evenly spread; a bearing B lets it (D − B)/2 into the edge.
 */
final class GrooveWay {

  private static final double ROUNDING = 1e-6;

  private final GrooveRequest request;
  private final Units units;
  private final SlotCutter cutter;
  private final List<String> sentences = new ArrayList<>();

  GrooveWay(GrooveRequest request, Units units) {
    this.request = request;
    this.units = units;
    cutter = request.cutter();
  }

  GrooveSetup work() {
    check();
    List<GrooveSetup.Height> heights = heights();
    double deepest = request.deepestPass().orElse(Passes.deepest(cutter.cutter()));
    List<GrooveSetup.Bite> bites = bites(deepest);
    List<Follower.Bearing> steps = bites.size() == 1 ? List.of() : steps(deepest);
    say(heights, bites, steps);
    OptionalInt ceiling = SpeedTable.ceiling(cutter.cutter().diameter());
    return new GrooveSetup(request, heights, bites, steps, ceiling, sentences);
  }

  private void check() {
    if (cutter.thickness() > request.width() + ROUNDING) {
      throw problem(
          "the slot cutter is "
              + print(cutter.thickness())
              + " thick and the groove "
              + print(request.width())
              + " wide; take a thinner cutter");
    }
    if (request.into() > cutter.depth() + ROUNDING) {
      throw problem(
          "with a bearing of "
              + print(cutter.bearing().diameter())
              + " the cutter goes "
              + print(cutter.depth())
              + " into the edge, not "
              + print(request.into())
              + "; take a bearing of "
              + Length.printAtMost(cutter.cutter().diameter() - 2 * request.into(), units)
              + " or a larger cutter");
    }
    if (request.deepestPass().isPresent()
        && request.deepestPass().getAsDouble() > cutter.depth() + ROUNDING) {
      throw problem(
          "a bite of "
              + print(request.deepestPass().getAsDouble())
              + " is deeper than the "
              + print(cutter.depth())
              + " that the cutter goes in; take smaller bites");
    }
  }

  private Problem problem(String sentence) {
    return new Problem(Place.field(request.operation()), sentence);
  }

  private String print(double mm) {
    return Length.print(mm, units);
  }

  private List<GrooveSetup.Height> heights() {
    int count = (int) Math.ceil(request.width() / cutter.thickness() - ROUNDING);
    if (count > SetupPractice.shipped().number("most-passes")) {
      throw problem(
          "a cutter "
              + print(cutter.thickness())
              + " thick would take "
              + count
              + " heights for this groove; take a thicker cutter");
    }
    double spread = request.width() - cutter.thickness();
    List<GrooveSetup.Height> heights = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double down = count == 1 ? spread : spread * i / (count - 1);
      heights.add(new GrooveSetup.Height(i + 1, request.fromFace() + down, spread - down));
    }
    return heights;
  }

  private List<GrooveSetup.Bite> bites(double deepest) {
    List<GrooveSetup.Bite> bites = new ArrayList<>();
    for (double into : Passes.inSteps(request.into(), deepest, units)) {
      bites.add(new GrooveSetup.Bite(bites.size() + 1, into, request.into() - into));
    }
    return bites;
  }

  /** From outside in, always the smallest bearing whose bite is not too deep; none where one is. */
  private List<Follower.Bearing> steps(double deepest) {
    List<Follower.Bearing> wide = new ArrayList<>(request.bearings());
    wide.removeIf(b -> depth(b) <= ROUNDING || depth(b) >= cutter.depth() - ROUNDING);
    wide.sort(Comparator.comparingDouble(this::depth));
    wide.add(cutter.bearing());
    List<Follower.Bearing> steps = new ArrayList<>();
    double at = 0;
    int next = 0;
    while (next < wide.size()) {
      int chosen = -1;
      while (next < wide.size() && depth(wide.get(next)) <= at + deepest + ROUNDING) {
        chosen = next++;
      }
      if (chosen < 0) {
        return List.of();
      }
      steps.add(wide.get(chosen));
      at = depth(wide.get(chosen));
    }
    return steps;
  }

  private double depth(Follower.Bearing bearing) {
    return cutter.cutter().radius() - bearing.radius();
  }

  private void say(
      List<GrooveSetup.Height> heights,
      List<GrooveSetup.Bite> bites,
      List<Follower.Bearing> steps) {
    double last = heights.get(heights.size() - 1).nearSide();
    StringBuilder words = new StringBuilder("Set the cutter's near side ");
    words.append(print(last)).append(" from face ").append(request.face());
    if (heights.size() > 1) {
      List<String> spacers = new ArrayList<>();
      for (GrooveSetup.Height height : heights.subList(0, heights.size() - 1)) {
        spacers.add(print(height.spacer()));
      }
      words.append("; go round first with spacers of ").append(String.join(", ", spacers));
      words.append(" on the turret stop, then with none");
    }
    sentences.add(words.append(".").toString());
    if (bites.size() > 1) {
      sentences.add(inwards(bites, steps));
    }
  }

  private String inwards(List<GrooveSetup.Bite> bites, List<Follower.Bearing> steps) {
    List<String> spacers = new ArrayList<>();
    for (GrooveSetup.Bite bite : bites.subList(0, bites.size() - 1)) {
      spacers.add(print(bite.spacer()));
    }
    String words =
        "Go "
            + print(request.into())
            + " into the edge in "
            + bites.size()
            + " bites: "
            + (request.straight() ? "" : "along a straight edge ")
            + "with the fence set for the last and strips of "
            + String.join(", ", spacers)
            + " before it in turn";
    if (request.straight()) {
      return words + ".";
    }
    if (steps.isEmpty()) {
      return words + "; along a curve feed in slowly to the bearing in as many light rounds.";
    }
    List<String> bearings = new ArrayList<>();
    for (Follower.Bearing step : steps) {
      bearings.add(print(step.diameter()));
    }
    return words + "; along a curve with bearings of " + String.join(", ", bearings) + " in turn.";
  }
}
