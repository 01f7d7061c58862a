package org.bearingline.shape.step;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.bearingline.outline.Point;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.yaml.YamlNode;

/** Reads the steps of an outline. */
public final class Outlines {

  private static final Map<String, Function<Fields, Step>> BY_WORD = words();

  private Outlines() {}

  private static Map<String, Function<Fields, Step>> words() {
    Map<String, Function<Fields, Step>> words = new LinkedHashMap<>();
    words.put("start", Outlines::start);
    words.put("line", LineStep::read);
    words.put("arc", ArcStep::read);
    words.put("lift", LiftStep::read);
    words.put("batten", BattenStep::read);
    words.put("ellipse", EllipseStep::read);
    words.put("bezier", BezierStep::read);
    words.put("round", Outlines::round);
    words.put("mirror", Outlines::mirror);
    words.put("close", fields -> LineStep.close(fields.node()));
    return Collections.unmodifiableMap(words);
  }

  public static Listed<Step> read(YamlNode list, Scope scope) {
    return Listed.read(list, scope, "steps", Outlines::step);
  }

  /** A pen that has drawn the listed steps. */
  public static Pen drawn(Listed<Step> steps, Values values) {
    Pen pen = new Pen();
    steps.forEach(values, (step, inner) -> step.draw(pen, inner));
    return pen;
  }

  private static Step step(YamlNode item, Scope scope) {
    if (!item.isMapping() || item.fields().size() != 1) {
      throw item.problem(
          "a step is one word and what it needs, such as “line: {to: [0, 0]}”; this is something"
              + " else");
    }
    String word = item.fields().keySet().iterator().next();
    Function<Fields, Step> reader = BY_WORD.get(word);
    if (reader == null) {
      Set<String> known = new TreeSet<>(BY_WORD.keySet());
      known.addAll(List.of("repeat", "when"));
      throw new Problem(
          item.placeOfName(word),
          "“"
              + word
              + "” is no step of an outline"
              + NearestName.among(known, word)
                  .map(near -> "; did you mean " + near + "?")
                  .orElse("; the steps are " + String.join(", ", known)));
    }
    return reader.apply(new Fields(item.fields().get(word), scope));
  }

  private static Step start(Fields f) {
    PointFormula point = Fields.pointOf(f.node(), f.scope());
    return (pen, values) -> pen.start(point.at(values), f.place());
  }

  private static Step round(Fields f) {
    Formula radius = Formula.read(f.node(), f.scope(), Dimension.LENGTH);
    return (pen, values) ->
        pen.round(radius.notNegative(values, "the radius of a rounded corner"), f.place());
  }

  private static Step mirror(Fields f) {
    f.allowOnly("x", "y", "across");
    if (f.count("x", "y", "across") != 1) {
      throw f.problem(
          "a half is mirrored across one line: {x: …}, {y: …} or {across: [[x, y], [x, y]]}");
    }
    Place place = f.place();
    if (f.has("across")) {
      List<PointFormula> line = f.points("across");
      if (line.size() != 2) {
        throw f.node().field("across").problem("a mirror line goes through two points");
      }
      return (pen, values) -> {
        Point p = line.get(0).at(values);
        Point q = line.get(1).at(values);
        if (p.distanceTo(q) < Pen.SHORTEST) {
          throw new Problem(place, "the two points of the mirror line are the same; move one");
        }
        pen.mirror(p, q, place);
      };
    }
    boolean upright = f.has("x");
    Formula at = f.length(upright ? "x" : "y");
    return (pen, values) -> {
      double c = at.value(values);
      Point p = upright ? new Point(c, 0) : new Point(0, c);
      Point q = upright ? new Point(c, 1) : new Point(1, c);
      pen.mirror(p, q, place);
    };
  }
}
