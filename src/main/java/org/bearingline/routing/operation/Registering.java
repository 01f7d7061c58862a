package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Chooses what locates the templates of a part. */
final class Registering {

  private final Part part;
  private final Mark.CentreLine axis;
  private final PinFinder pins;

  Registering(
      Part part, List<Outline> plates, Mark.CentreLine axis, boolean symmetrical, Units units) {
    this.part = part;
    this.axis = axis;
    this.pins =
        new PinFinder(
            part,
            plates,
            symmetrical ? Optional.empty() : Optional.of(Symmetry.mirror(axis)),
            units);
  }

  /** What the maker asked for, else own holes, else sawn edges, else centre lines. */
  Registration chosen(Optional<FaceWishes.Register> wish) {
    if (wish.isEmpty()) {
      return pins.inOwnHoles()
          .<Registration>map(found -> found)
          .or(() -> stops().map(found -> found))
          .orElseGet(this::lines);
    }
    return switch (wish.get()) {
      case PINS ->
          pins.inOwnHoles()
              .or(pins::inWaste)
              .orElseThrow(
                  () ->
                      refusal(
                          "there is no place for two pins: the part has neither two holes of its"
                              + " own nor sawn edges with enough template behind them; register by"
                              + " lines, or add two drill marks to the shape"));
      case STOPS ->
          stops()
              .orElseThrow(
                  () ->
                      refusal(
                          "stops bear on sawn edges, and this part has none; register by pins or"
                              + " lines"));
      case LINES -> lines();
    };
  }

  private static Problem refusal(String sentence) {
    return new Problem(Place.field("register"), sentence);
  }

  private Optional<Registration.Stops> stops() {
    List<Line> sides = SawnSides.of(part);
    if (sides.isEmpty()) {
      return Optional.empty();
    }
    List<Line> chosen = new ArrayList<>();
    chosen.add(sides.get(0));
    sides.stream()
        .filter(side -> !SawnSides.areParallel(side, sides.get(0)))
        .findFirst()
        .ifPresent(chosen::add);
    return Optional.of(
        new Registration.Stops(
            chosen.stream().map(line -> Path.of(line)).toList(), stopSentences(chosen)));
  }

  /** How to fix stops along sawn edges, wood on the left of each. */
  static List<String> stopSentences(List<Line> sides) {
    String where = Sentences.list(sides.stream().map(SawnSides::word).toList());
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Fix stops under the template along the "
            + where
            + (sides.size() == 1 ? " sawn edge" : " sawn edges")
            + " and push the work against them; for the other face fix them along the same lines on"
            + " the template's other side.");
    if (sides.size() == 1) {
      sentences.add("Along that edge, set the template by the centre line.");
    }
    return sentences;
  }

  private Registration lines() {
    List<Mark.CentreLine> lines = new ArrayList<>();
    lines.add(axis);
    for (Mark.CentreLine other : Symmetry.axes(part)) {
      if (lines.size() == 1 && !isParallel(other)) {
        lines.add(other);
      }
    }
    return new Registration.Lines(
        lines,
        List.of(
            "Square the two centre lines round the work onto both faces, draw them on both sides of"
                + " the template, and lay line on line."));
  }

  private boolean isParallel(Mark.CentreLine other) {
    return SawnSides.areParallel(
        new Line(axis.from(), axis.to()), new Line(other.from(), other.to()));
  }
}
