package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.kit.Bit;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Passes;
import org.bearingline.routing.Practice;

/** A setup while it is being worked out: what every way of guiding a bit needs. */
final class SetupDraft {

  /** Room for rounding where a length just suffices; mm. */
  static final double ROUNDING = 1e-6;

  private final SetupRequest request;
  private final Units units;
  private final Practice practice = SetupPractice.shipped();
  private final List<SetupPass> passes = new ArrayList<>();
  private final List<String> sentences = new ArrayList<>();
  private final List<String> advice = new ArrayList<>();
  private OptionalDouble leastTemplate = OptionalDouble.empty();

  SetupDraft(SetupRequest request, Units units) {
    this.request = request;
    this.units = units;
  }

  SetupRequest request() {
    return request;
  }

  SetupTool tool() {
    return request.tool();
  }

  double practice(String rule) {
    return practice.mm(rule, units);
  }

  double bearingHeight() {
    return tool().bearingHeight().orElse(practice.mm("bearing-height"));
  }

  /** mm of the bearing's height that must touch. */
  double contact() {
    return practice.number("contact-share") * bearingHeight();
  }

  /** mm that a pass takes at most; fails where the maker asks for more than the cutter is long. */
  double deepestPass() {
    double longest = tool().cuttingLength().orElse(Double.POSITIVE_INFINITY);
    if (request.deepestPass().isPresent()) {
      double asked = request.deepestPass().getAsDouble();
      if (asked > longest + ROUNDING) {
        throw problem(
            "a pass of "
                + print(asked)
                + " is deeper than the cutting edge of "
                + print(longest)
                + " is long; take shallower passes or a longer bit");
      }
      return asked;
    }
    return Math.min(longest, Passes.deepest(tool().cutter()));
  }

  Problem problem(String sentence) {
    return new Problem(Place.field(request.operation()), sentence);
  }

  String print(double mm) {
    return Length.print(mm, units);
  }

  String rough(double mm) {
    return Length.printRough(mm, units);
  }

  String atLeast(double mm) {
    return Length.printAtLeast(mm, units);
  }

  String atMost(double mm) {
    return Length.printAtMost(mm, units);
  }

  void say(String sentence) {
    sentences.add(sentence);
    advice.add(sentence);
  }

  /** Says what the passes and the ceiling of speed tell as figures too. */
  private void sayFigures(String sentence) {
    sentences.add(sentence);
  }

  void templateAtLeast(double mm) {
    leastTemplate = OptionalDouble.of(mm);
  }

  /** Whether the given template is thick enough, as far as is known. */
  boolean templateServes() {
    return leastTemplate.isEmpty()
        || request.templateThickness().isEmpty()
        || request.templateThickness().getAsDouble() >= leastTemplate.getAsDouble() - ROUNDING;
  }

  /** Depths of even passes from one depth down to another. */
  List<Double> depths(double from, double to) {
    double deepest = deepestPass();
    if ((to - from) / deepest > practice.number("most-passes")) {
      throw problem(
          "a depth of "
              + print(to - from)
              + " in passes of "
              + print(deepest)
              + " would take over "
              + Math.round(practice.number("most-passes"))
              + " passes; check the depth and the bit's diameter");
    }
    List<Double> depths = new ArrayList<>();
    for (double depth : Passes.inSteps(to - from, deepest, units)) {
      depths.add(from + depth);
    }
    depths.set(depths.size() - 1, to);
    return depths;
  }

  interface Held {
    boolean at(double depth);
  }

  /**
   * Adds a stage of passes.
   *
   * @param from mm already cut
   * @param depths of the stage's passes
   */
  void stage(double from, List<Double> depths, Riding rides, Held held) {
    double last = depths.get(depths.size() - 1);
    double before = from;
    for (double depth : depths) {
      passes.add(
          new SetupPass(
              passes.size() + 1, depth, depth - before, last - depth, rides, held.at(depth)));
      before = depth;
    }
  }

  /** The stop's spacers for a stage of passes in words; nothing for a single pass. */
  void saySpacers(List<Double> depths, String what) {
    double last = depths.get(depths.size() - 1);
    if (depths.size() == 1) {
      sayFigures(what + ": 1 pass, " + print(last) + " deep.");
      return;
    }
    List<String> spacers = new ArrayList<>();
    for (double depth : depths.subList(0, depths.size() - 1)) {
      spacers.add(print(last - depth));
    }
    sayFigures(
        what
            + ": "
            + depths.size()
            + " passes, the last "
            + print(last)
            + " deep; "
            + (request.atTable()
                ? "mark the bit's height for that depth, then begin "
                    + String.join(", ", spacers)
                    + " below the mark in turn, and raise it to the mark for the last."
                : "set the bit to that depth, then put spacers of "
                    + String.join(", ", spacers)
                    + " on the turret stop in turn, and none for the last."));
  }

  /** How work and template lie on the table. */
  private String side() {
    boolean tip = !tool().hasCollar() && tool().seat() == Bit.BearingSeat.TIP;
    return "At the table lay face "
        + request.face()
        + " down"
        + (tip
            ? ", with the template on top of the work, on face " + request.face().other() + "."
            : ", with the template under it, on the table.");
  }

  Setup finished() {
    OptionalInt ceiling = SpeedTable.ceiling(tool().cutter().diameter());
    String bit = print(tool().cutter().diameter()) + " bit";
    sayFigures(
        ceiling.isPresent()
            ? "Turn the "
                + bit
                + " no faster than "
                + String.format(Locale.ROOT, "%,d", ceiling.getAsInt())
                + " revolutions a minute, and never faster than its own marking."
            : "The "
                + bit
                + " is larger than the table of speeds: keep to the speed marked on it.");
    if (request.atTable()) {
      say(side());
    } else if (tool().cutter().diameter() > practice.mm("table-only-above") + ROUNDING) {
      say("The " + bit + " belongs in a router table only, never in a router held in the hand.");
    }
    return new Setup(
        request,
        passes,
        ceiling,
        new TemplateThickness(leastTemplate, request.templateThickness(), templateServes()),
        sentences,
        advice);
  }
}
