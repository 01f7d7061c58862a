package org.bearingline.routing.setup;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A bearing at the bit's tip, the template on the far side of the work from the router. Measured
 * down from the router's face through stock S thick, the template fills S to S + T. With the
 * cutter's lower end at p the bearing fills p to p + B: it is on the template only where p ≥ S − (B
 * − contact), so the cut is made at one depth and the waste taken in bites sideways. That depth is
 * p = S + e, e a little overlap, which asks for a cutting edge of S + e and a template of e +
 * contact. A bearing narrower than the cutter has the template standing out under it: then e = 0. A
 * cut that stops inside the wood, a rebate, can be made only where such a narrower bearing runs on
 * the work's own edge below it.
 */
final class TipWay {

  private final SetupDraft draft;

  TipWay(SetupDraft draft) {
    this.draft = draft;
  }

  void work() {
    SetupRequest request = draft.request();
    if (!request.through() && isNarrower()) {
      rebate();
      return;
    }
    if (!request.through()) {
      throw draft.problem(
          "a bearing at the bit's tip cannot guide a cut that stops inside the wood; use a bit with"
              + " its bearing on the shank, or a collar");
    }
    SetupTool tool = draft.tool();
    double overlap = isNarrower() ? 0 : draft.practice("overlap");
    double depth = request.depth() + overlap;
    checkLength(tool.cuttingLength(), depth);
    draft.templateAtLeast(overlap + draft.contact());
    boolean held = draft.templateServes();
    draft.stage(0, List.of(depth), Riding.TEMPLATE, at -> held);
    draft.say(
        "Bearing at the tip: lay the template on face "
            + request.face().other()
            + ", away from the router, and set the bit once, "
            + draft.print(depth)
            + " deep, for only there the bearing is on the template; saw the waste to within "
            + draft.atMost(draft.practice("widest-waste"))
            + " of the line and take it in light bites sideways.");
    if (!held) {
      draft.say(
          "The template of "
              + draft.print(request.templateThickness().getAsDouble())
              + " is too thin for the bearing to stay on; take one of at least "
              + draft.atLeast(overlap + draft.contact())
              + ".");
    }
  }

  private boolean isNarrower() {
    SetupTool tool = draft.tool();
    return tool.follower().radius() < tool.cutter().radius() - SetupDraft.ROUNDING;
  }

  /** The bearing runs on the work's own edge below the cut, at every depth. */
  private void rebate() {
    List<Double> depths = draft.depths(0, draft.request().depth());
    draft.stage(0, depths, Riding.ROUTED_EDGE, at -> true);
    draft.saySpacers(depths, "Bearing at the tip, on the edge below the cut");
    draft.say(
        "Finish that edge first, and leave at least "
            + draft.atLeast(draft.contact())
            + " of it below the cut for the bearing.");
  }

  private void checkLength(OptionalDouble cuttingLength, double depth) {
    if (cuttingLength.isEmpty()) {
      draft.say(
          "The bit's cutting edge must be at least " + draft.atLeast(depth) + " long; measure it.");
    } else if (cuttingLength.getAsDouble() < depth - SetupDraft.ROUNDING) {
      throw draft.problem(
          "with its bearing at the tip the bit cuts the whole "
              + draft.print(depth)
              + " at once, deeper than its cutting edge of "
              + draft.print(cuttingLength.getAsDouble())
              + " is long; take a longer bit, or rout part of the depth with the bearing on the"
              + " shank first");
    }
    if (draft.request().deepestPass().isPresent()
        && draft.request().deepestPass().getAsDouble() < depth - SetupDraft.ROUNDING) {
      draft.say(
          "The limit of "
              + draft.print(draft.request().deepestPass().getAsDouble())
              + " for a pass cannot be kept with the bearing at the tip: in its place take bites no"
              + " wider than that sideways.");
    }
  }
}
