package org.bearingline.shape.step;

import java.util.Optional;
import org.bearingline.outline.construct.ReverseCurve;
import org.bearingline.outline.construct.Side;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Values;

/**
 * A lift: two tangent arcs, with an optional straight between, that carry an edge over to a
 * parallel one. It rises to the left or right as one walks along it.
 */
record LiftStep(Construction construction, Heading heading, Side side, Place place)
    implements Step {

  /** How a lift follows from what is given. */
  private interface Construction {
    ReverseCurve with(Values values);
  }

  /** What may be given, as formulas. */
  private record Given(
      Optional<Formula> rise,
      Optional<Formula> run,
      Optional<Formula> first,
      Optional<Formula> second,
      Optional<Formula> straight,
      Optional<Formula> angle) {

    double rise(Values v) {
      return rise.orElseThrow().positive(v, "the rise of a lift");
    }

    double run(Values v) {
      return run.orElseThrow().positive(v, "the run of a lift");
    }

    double first(Values v) {
      return first.orElseThrow().positive(v, "a radius");
    }

    double second(Values v) {
      return second.orElseThrow().positive(v, "a radius");
    }

    double straight(Values v) {
      return straight.map(s -> s.notNegative(v, "the straight of a lift")).orElse(0.0);
    }

    double angle(Values v) {
      return angle.orElseThrow().positive(v, "the angle of a lift");
    }

    /** Which are given, one letter each. */
    String pattern() {
      return (rise.isPresent() ? "h" : "")
          + (run.isPresent() ? "l" : "")
          + (first.isPresent() ? "1" : "")
          + (second.isPresent() ? "2" : "")
          + (straight.isPresent() ? "s" : "")
          + (angle.isPresent() ? "a" : "");
    }
  }

  static Step read(Fields f) {
    f.allowOnly(
        "rise",
        "run",
        "radius",
        "first_radius",
        "second_radius",
        "straight",
        "angle",
        "side",
        "along",
        "edge");
    f.curvedEdge();
    if (f.has("radius") && f.count("first_radius", "second_radius") > 0) {
      throw f.problem("“radius” sets both radii; write it alone, or first_radius, second_radius");
    }
    Optional<Formula> both = f.optionalLength("radius");
    Given given =
        new Given(
            f.optionalLength("rise"),
            f.optionalLength("run"),
            both.or(() -> f.optionalLength("first_radius")),
            both.or(() -> f.optionalLength("second_radius")),
            f.optionalLength("straight"),
            f.optionalAngle("angle"));
    return new LiftStep(construction(f, given), Heading.read(f), f.side("side"), f.place());
  }

  private static Construction construction(Fields f, Given g) {
    return switch (g.pattern()) {
      case "h12", "h12s" ->
          v ->
              ReverseCurve.ofRiseRadiiAndStraight(
                  g.rise(v), g.first(v), g.second(v), g.straight(v));
      case "hl" -> v -> ReverseCurve.ofRiseAndRun(g.rise(v), g.run(v));
      case "hls" -> v -> ReverseCurve.ofRiseRunAndStraight(g.rise(v), g.run(v), g.straight(v));
      case "hl1" -> v -> ReverseCurve.ofRiseRunAndFirstRadius(g.rise(v), g.run(v), g.first(v));
      case "hl2" -> v -> ReverseCurve.ofRiseRunAndSecondRadius(g.rise(v), g.run(v), g.second(v));
      case "hl12" ->
          v -> ReverseCurve.ofRiseRunAndRadii(g.rise(v), g.run(v), g.first(v), g.second(v));
      case "l12" -> v -> ReverseCurve.ofRunAndRadii(g.run(v), g.first(v), g.second(v));
      case "ha" -> v -> ReverseCurve.ofRiseAndTurn(g.rise(v), g.angle(v));
      case "12a" -> v -> ReverseCurve.ofRadiiAndTurn(g.first(v), g.second(v), g.angle(v));
      default ->
          throw f.problem(
              "a lift is given by its rise and radius (with a straight if wanted), by rise and"
                  + " run (with one radius, both or a straight), by run and radius, or by an"
                  + " angle with the rise or the radius");
    };
  }

  @Override
  public void draw(Pen pen, Values values) {
    double degrees = heading.degrees(pen, values, place);
    ReverseCurve curve = Pen.at(place, () -> construction.with(values));
    pen.addAll(
        Pen.at(place, () -> curve.from(pen.at(place), degrees, side)).primitives(),
        EdgeKind.ROUTED,
        place);
  }
}
