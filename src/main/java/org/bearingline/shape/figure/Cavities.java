package org.bearingline.shape.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.OffsetResult;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Listed;
import org.bearingline.shape.step.Pen;
import org.bearingline.yaml.YamlNode;

/** All that a shape takes out inside its outer edge. */
public record Cavities(Listed<CavityPlan> plans) {

  private static final int MOST = 1000;

  public static Cavities read(Optional<YamlNode> list, Scope scope) {
    return new Cavities(
        list.isPresent()
            ? Listed.read(list.get(), scope, "openings", CavityReader::read)
            : (values, action) -> {});
  }

  /** The cavities, checked against the outer edge and each other. */
  public List<Cavity> drawn(Values values, PartCheck check) {
    Map<String, Cavity> byName = new LinkedHashMap<>();
    plans.forEach(
        values,
        (plan, inner) -> {
          if (byName.size() == MOST) {
            throw new Problem(plan.place(), "the shape has more than " + MOST + " openings");
          }
          String name = freeName(plan.name(), byName);
          Cavity cavity =
              new Cavity(name, plan.kind(), contour(plan, inner, byName), depth(plan, inner));
          check.add(cavity, plan.place());
          byName.put(name, cavity);
        });
    return new ArrayList<>(byName.values());
  }

  /** A repeated opening takes a number after its name. */
  private static String freeName(String name, Map<String, Cavity> taken) {
    String free = name;
    for (int number = 2; taken.containsKey(free); number++) {
      free = name + "-" + number;
    }
    return free;
  }

  private static OptionalDouble depth(CavityPlan plan, Values values) {
    return plan.depth().isPresent()
        ? OptionalDouble.of(plan.depth().get().positive(values, "a depth"))
        : OptionalDouble.empty();
  }

  private static Contour contour(CavityPlan plan, Values values, Map<String, Cavity> before) {
    if (plan.figure().isPresent()) {
      return plan.figure().get().drawn(values);
    }
    String around = plan.around().orElseThrow();
    Cavity inner = before.get(around);
    if (inner == null) {
      throw new Problem(
          plan.place(),
          "no opening named “"
              + around
              + "” stands before this ledge"
              + NearestName.hint(before.keySet(), around));
    }
    double width = plan.width().orElseThrow().positive(values, "the width of a ledge");
    Region region = Region.of(Outline.of(inner.contour().loop()));
    OffsetResult grown = Pen.at(plan.place(), () -> Morphology.dilate(region, width));
    if (grown.region().pieces().size() != 1
        || !grown.region().pieces().get(0).openings().isEmpty()) {
      throw new Problem(
          plan.place(), "a ledge of that width closes on itself round “" + around + "”");
    }
    return Contour.routed(grown.region().pieces().get(0).outer());
  }
}
