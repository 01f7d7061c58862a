package org.bearingline.routing.setup;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A collar on the base. With the work's face at height 0 the template fills 0 to T and the base
 * rides on it at T; the tube reaches down to T − tube, which must stay above the work: T &gt; tube.
 * The collar is on the template at every depth; for a depth d the bit stands T + d below the base.
 */
final class CollarWay {

  private final SetupDraft draft;

  CollarWay(SetupDraft draft) {
    this.draft = draft;
  }

  void work() {
    tube();
    double depth = draft.request().depth();
    List<Double> depths = draft.depths(0, depth);
    draft.stage(0, depths, Riding.TEMPLATE, at -> true);
    draft.saySpacers(depths, "Collar on the template");
    draft
        .request()
        .templateThickness()
        .ifPresent(
            thickness ->
                draft.say(
                    "For the full depth the bit stands "
                        + draft.print(thickness + depth)
                        + (draft.request().atTable() ? " above the table." : " below the base.")));
    OptionalDouble cuttingLength = draft.tool().cuttingLength();
    if (cuttingLength.isPresent() && cuttingLength.getAsDouble() < depth - SetupDraft.ROUNDING) {
      draft.say(
          "The cut is deeper than the cutting edge of "
              + draft.print(cuttingLength.getAsDouble())
              + " is long: the shank must be no thicker than the bit, and chips need clearing"
              + " after each pass.");
    }
  }

  private void tube() {
    double clearance = draft.practice("tube-clearance");
    OptionalDouble given = draft.request().templateThickness();
    if (draft.tool().collarTube().isEmpty()) {
      double usual = draft.practice("collar-tube");
      String words =
          "The template must be thicker than the collar's tube is long: tubes are often "
              + draft.rough(usual)
              + " long; measure yours";
      boolean thin = given.isPresent() && given.getAsDouble() <= usual;
      draft.say(
          words
              + (thin
                  ? ", for this template of "
                      + draft.print(given.getAsDouble())
                      + " is too thin for that one."
                  : "."));
      return;
    }
    double tube = draft.tool().collarTube().getAsDouble();
    draft.templateAtLeast(tube + clearance);
    if (given.isPresent() && given.getAsDouble() <= tube + SetupDraft.ROUNDING) {
      throw draft.problem(
          "the template of "
              + draft.print(given.getAsDouble())
              + " is no thicker than the collar's tube of "
              + draft.print(tube)
              + " is long, so the tube would stand on the work; take a template of at least "
              + draft.atLeast(tube + clearance)
              + ", or shorten the tube");
    }
    if (given.isEmpty()) {
      draft.say(
          "Make the template at least "
              + draft.atLeast(tube + clearance)
              + " thick, so that the collar's tube of "
              + draft.print(tube)
              + " stays clear of the work.");
    } else if (!draft.templateServes()) {
      draft.say(
          "The collar's tube of "
              + draft.print(tube)
              + " clears the work by less than "
              + draft.print(clearance)
              + ": keep chips from under it.");
    }
  }
}
