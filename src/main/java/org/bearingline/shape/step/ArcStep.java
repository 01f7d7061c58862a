package org.bearingline.shape.step;

import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.ArcBy;
import org.bearingline.outline.construct.Continuation;
import org.bearingline.outline.construct.Side;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * A circular arc: to a point through another, with a rise or a radius; or going on tangent to a
 * point or by an angle. It turns left or right as one walks along it.
 */
record ArcStep(Construction construction, Place place) implements Step {

  /** How an arc follows from what is given. */
  private interface Construction {
    Primitive from(Pen pen, Values values);
  }

  static Step read(Fields f) {
    f.allowOnly("to", "by", "through", "rise", "radius", "turn", "long", "angle", "along", "edge");
    f.curvedEdge();
    return new ArcStep(construction(f), f.place());
  }

  private static Construction construction(Fields f) {
    Place place = f.place();
    if (f.has("angle")) {
      require(f, "radius", "turn");
      refuse(f, "with “angle”", "to", "by", "through", "rise", "long");
      Formula radius = f.length("radius");
      Formula angle = f.angle("angle");
      Side turn = f.side("turn");
      Heading heading = Heading.read(f);
      return (pen, values) ->
          Continuation.arc(
              pen.at(place),
              heading.degrees(pen, values, place),
              radius.positive(values, "a radius"),
              turn,
              angle.positive(values, "the angle an arc turns"));
    }
    if (f.count("to", "by") != 1) {
      throw f.problem("an arc ends “to” a point or “by” a shift, or turns by an “angle”");
    }
    End end = End.read(f);
    if (f.has("through")) {
      refuse(f, "with “through”", "rise", "radius", "turn", "long", "along");
      PointFormula through = f.point("through");
      return (pen, values) ->
          ArcBy.throughPoint(pen.at(place), through.at(values), end.from(pen, values, place));
    }
    if (f.has("rise")) {
      require(f, "turn");
      refuse(f, "with “rise”", "radius", "long", "along");
      return byRise(f.length("rise"), f.side("turn"), end, place);
    }
    if (f.has("radius")) {
      require(f, "turn");
      refuse(f, "with “radius”", "along");
      Formula radius = f.length("radius");
      Side turn = f.side("turn");
      boolean major = f.has("long") && f.word("long", List.of("yes", "no")).equals("yes");
      return (pen, values) ->
          ArcBy.chordAndRadius(
              pen.at(place),
              end.from(pen, values, place),
              radius.positive(values, "a radius"),
              turn.opposite(),
              major);
    }
    refuse(f, "where the arc goes on tangent", "turn", "long");
    Heading heading = Heading.read(f);
    return (pen, values) ->
        Continuation.to(
            pen.at(place), heading.vector(pen, values, place), end.from(pen, values, place));
  }

  // An arc that turns left lies to the right of its chord. A rise of 0 is the chord itself.
  private static Construction byRise(Formula rise, Side turn, End end, Place place) {
    return (pen, values) -> {
      Point from = pen.at(place);
      Point to = end.from(pen, values, place);
      double height = rise.notNegative(values, "a rise");
      return height == 0 && from.distanceTo(to) >= Pen.SHORTEST
          ? new Line(from, to)
          : ArcBy.chordAndRise(from, to, height, turn.opposite());
    };
  }

  private static void require(Fields f, String... names) {
    for (String name : names) {
      if (!f.has(name)) {
        throw f.problem("this arc needs “" + name + ":” too");
      }
    }
  }

  private static void refuse(Fields f, String where, String... names) {
    for (String name : names) {
      if (f.has(name)) {
        throw f.node().field(name).problem("“" + name + "” has no use " + where + "; remove it");
      }
    }
  }

  @Override
  public void draw(Pen pen, Values values) {
    pen.add(Pen.at(place, () -> construction.from(pen, values)), EdgeKind.ROUTED, place);
  }
}
