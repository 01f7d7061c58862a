package org.bearingline.shape.step;

import java.util.Map;
import org.bearingline.outline.Point;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Plain;
import org.bearingline.shape.formula.Values;
import org.bearingline.yaml.YamlNode;

/** A straight line: to a point, by a shift or a length, or along a direction until a coordinate. */
record LineStep(Target target, EdgeKind edge, Place place) implements Step {

  private static final Map<String, Double> DIRECTIONS =
      Map.of("right", 0.0, "up", 90.0, "left", 180.0, "down", 270.0);

  private static final String[] ENDS = {"to", "by", "until", "right", "left", "up", "down"};

  /** Where a line ends. */
  private interface Target {
    Point from(Pen pen, Values values);
  }

  static Step read(Fields f) {
    f.allowOnly("to", "by", "until", "along", "right", "left", "up", "down", "edge");
    if (f.count(ENDS) != 1) {
      throw f.problem(
          "a line ends in one way: write one of “to”, “by”, “until”, “right”, “left”, “up”,"
              + " “down”");
    }
    return new LineStep(target(f), f.edge(), f.place());
  }

  private static Target target(Fields f) {
    Place place = f.place();
    if (f.has("to")) {
      refuseAlong(f);
      PointFormula to = f.point("to");
      return (pen, values) -> to.at(values);
    }
    if (f.has("by") && f.node().field("by").isList()) {
      refuseAlong(f);
      PointFormula by = f.point("by");
      return (pen, values) -> pen.at(place).plus(by.at(values));
    }
    if (f.has("by")) {
      Formula length = f.length("by");
      Heading heading = Heading.read(f);
      return (pen, values) -> {
        Point way = heading.vector(pen, values, place);
        return pen.at(place).plus(way.times(length.notNegative(values, "the length of a line")));
      };
    }
    if (f.has("until")) {
      return until(f);
    }
    refuseAlong(f);
    String way = DIRECTIONS.keySet().stream().filter(f::has).findFirst().orElseThrow();
    Formula length = f.length(way);
    return (pen, values) ->
        pen.at(place)
            .plus(
                Point.polar(
                    length.notNegative(values, "the length of a line"), DIRECTIONS.get(way)));
  }

  private static void refuseAlong(Fields f) {
    if (f.has("along")) {
      throw f.node()
          .field("along")
          .problem("“along” gives a direction to “by” with a length, or to “until”; remove it");
    }
  }

  private static Target until(Fields f) {
    YamlNode node = f.node().field("until");
    Fields until = new Fields(node, f.scope()).allowOnly("x", "y");
    if (until.count("x", "y") != 1) {
      throw node.problem("a line runs until one coordinate: {x: …} or {y: …}");
    }
    boolean isX = until.has("x");
    Formula goal = until.length(isX ? "x" : "y");
    Heading heading = Heading.read(f);
    return (pen, values) -> {
      Point from = pen.at(node.place());
      Point way = heading.vector(pen, values, f.place());
      double distance = goal.value(values) - (isX ? from.x() : from.y());
      double share = isX ? way.x() : way.y();
      if (Math.abs(share) < 1e-9 || distance / share < 0) {
        throw goal.problem(
            "the line sets out at "
                + Plain.of(way.degrees(), Dimension.ANGLE)
                + " from "
                + Pen.words(from)
                + " and never comes to "
                + (isX ? "x = " : "y = ")
                + Plain.mm(goal.value(values)));
      }
      Point end = from.plus(way.times(distance / share));
      return isX ? new Point(goal.value(values), end.y()) : new Point(end.x(), goal.value(values));
    };
  }

  @Override
  public void draw(Pen pen, Values values) {
    pen.line(target.from(pen, values), edge, place);
  }

  /** Reads {@code close: sawn} and {@code close: routed}. */
  static Step close(YamlNode node) {
    EdgeKind kind = Fields.edgeOf(node);
    return (pen, values) -> pen.close(kind, node.place());
  }
}
