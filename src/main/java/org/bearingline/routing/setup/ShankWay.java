package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;

/**
 * A bearing on the bit's shank, right above the cutting edge, the template on the router's side of
 * the work. With the work's face at height 0 the template fills 0 to T; at a pass of depth p the
 * cutting edge of length C fills −p to C − p and the bearing of height B fills C − p to C − p + B.
 * So the bearing touches min(T, C − p + B) − max(0, C − p), which the first and shallowest pass p₁
 * makes least: T ≥ C − p₁ + contact.
 */
final class ShankWay {

  private final SetupDraft draft;
  private final double depth;
  private final double wider;

  ShankWay(SetupDraft draft) {
    this.draft = draft;
    depth = draft.request().depth();
    wider = draft.tool().follower().radius() - draft.tool().cutter().radius();
  }

  void work() {
    OptionalDouble known = draft.tool().cuttingLength();
    if (known.isEmpty()) {
      ofUnknownLength();
      return;
    }
    double length = known.getAsDouble();
    if (wider < -SetupDraft.ROUNDING) {
      belowTheTemplate(length);
    } else if (depth <= deepestOnTemplate(length) + SetupDraft.ROUNDING) {
      onTemplate(length, depth);
    } else if (wider > SetupDraft.ROUNDING) {
      throw draft.problem(
          "the cut is "
              + draft.print(depth)
              + " deep and the cutting edge "
              + draft.print(length)
              + " long, so a bearing wider than the bit would meet the wood under the template;"
              + " take a longer bit, a bearing as wide as the bit, or a collar");
    } else {
      thickStock(length);
    }
  }

  /**
   * A flush bearing may hang down from the template over the edge just cut; a wider one may not.
   */
  private double deepestOnTemplate(double length) {
    boolean flush = Math.abs(wider) <= SetupDraft.ROUNDING;
    return flush ? length + draft.bearingHeight() - draft.contact() : length;
  }

  private void onTemplate(double length, double to) {
    List<Double> depths = draft.depths(0, to);
    double first = depths.get(0);
    double contact = draft.contact();
    double least = Math.max(contact, length - first + contact);
    draft.templateAtLeast(least);
    OptionalDouble given = draft.request().templateThickness();
    draft.stage(0, depths, Riding.TEMPLATE, at -> isHeld(given, length, at));
    draft.saySpacers(depths, "Bearing on the template");
    if (given.isEmpty() && least > draft.practice("thickest-template") + SetupDraft.ROUNDING) {
      // Hardly anybody has a plate so thick; what else would do is said as for a usual one.
      tooThin(draft.practice("usual-template"), length, first, to, least);
    } else if (given.isEmpty()) {
      draft.say(
          "Make the template at least "
              + draft.atLeast(least)
              + " thick: after a first pass of "
              + draft.print(first)
              + " a cutting edge of "
              + draft.print(length)
              + " holds the bearing "
              + draft.print(Math.max(0, length - first))
              + " above the work."
              + (draft.request().through() && least > draft.practice("thin-template")
                  ? " A thinner one does where the waste is sawn to within "
                      + draft.atMost(draft.practice("widest-waste"))
                      + " of the line: let the first pass be so deep that the bearing rides on it,"
                      + " and take it sideways in light bites."
                  : ""));
    } else if (!draft.templateServes()) {
      refuseOwnPasses(given.getAsDouble(), length, depths);
      tooThin(given.getAsDouble(), length, first, to, least);
    }
  }

  /** Passes of the maker's own that leave the bearing above his own template are his mistake. */
  private void refuseOwnPasses(double thickness, double length, List<Double> depths) {
    if (draft.request().deepestPass().isEmpty()) {
      return;
    }
    for (int i = 0; i < depths.size(); i++) {
      double at = depths.get(i);
      if (!isHeld(OptionalDouble.of(thickness), length, at)) {
        double needed = length - at + draft.contact();
        throw draft.problem(
            "at pass "
                + (i + 1)
                + " of "
                + depths.size()
                + ", "
                + draft.print(at)
                + " deep, the bearing leaves the template: a cutting edge of "
                + draft.print(length)
                + " holds it "
                + draft.print(length - at)
                + " above the work, and the template is "
                + draft.print(thickness)
                + " thick; take one of at least "
                + draft.atLeast(needed)
                + ", deeper passes or a shorter bit");
      }
    }
  }

  private void tooThin(double thickness, double length, double first, double to, double least) {
    double comesOn = length + draft.contact() - thickness;
    double longest = thickness + first - draft.contact();
    boolean comes = comesOn <= to + SetupDraft.ROUNDING;
    String template = "With a template of " + draft.print(thickness) + " the bearing ";
    String instead =
        "take one of at least "
            + draft.atLeast(least)
            + (longest > 0
                ? ", or a bit whose cutting edge is no longer than " + draft.atMost(longest)
                : "");
    if (!draft.request().through()) {
      draft.say(
          template
              + (comes
                  ? "is above it until the cut is " + draft.atLeast(comesOn) + " deep: "
                  : "never comes onto it: ")
              + instead
              + ".");
      return;
    }
    // What is sawn close to the line may be trimmed at full depth, even with the bit standing out.
    draft.say(
        template
            + "is above it until the "
            + (comes ? "cut is " : "bit is ")
            + draft.atLeast(comesOn)
            + " deep: "
            + instead
            + ", or, where the waste is sawn to within "
            + draft.atMost(draft.practice("widest-waste"))
            + " of the line, make that depth the first pass and take it sideways in light bites"
            + (comes
                ? "."
                : "; the bit then stands out of the work by "
                    + draft.atLeast(comesOn - to)
                    + ", so let nothing lie under the line."));
  }

  private boolean isHeld(OptionalDouble template, double length, double at) {
    double thickness = template.orElse(Double.POSITIVE_INFINITY);
    double low = Math.max(0, length - at);
    double high = Math.min(thickness, length - at + draft.bearingHeight());
    return high - low >= draft.contact() - SetupDraft.ROUNDING;
  }

  /**
   * A bearing narrower than the bit has the template standing out over the cut, so the whole
   * cutting edge must be below it from the first pass on.
   */
  private void belowTheTemplate(double length) {
    double deepest = length + draft.bearingHeight() - draft.contact();
    if (depth < length - SetupDraft.ROUNDING) {
      throw draft.problem(
          "at a depth of "
              + draft.print(depth)
              + " the cutting edge of "
              + draft.print(length)
              + " reaches up into the template, which stands out over the cut where the bearing is"
              + " narrower than the bit; take a bit with a shorter cutting edge, or a bearing as"
              + " wide as the bit");
    }
    if (depth > deepest + SetupDraft.ROUNDING) {
      throw draft.problem(
          "at a depth of "
              + draft.print(depth)
              + " the bearing above the cutting edge of "
              + draft.print(length)
              + " would be below the template; cut no deeper than "
              + draft.atMost(deepest)
              + ", or take a longer bit");
    }
    List<Double> depths = new ArrayList<>(List.of(Math.min(length, depth)));
    if (depth > length + SetupDraft.ROUNDING) {
      depths.addAll(draft.depths(length, depth));
    }
    draft.templateAtLeast(draft.contact());
    OptionalDouble given = draft.request().templateThickness();
    draft.stage(0, depths, Riding.TEMPLATE, at -> isHeld(given, length, at));
    draft.saySpacers(depths, "Bearing on the template");
    draft.say(
        "The first pass is as deep as the cutting edge is long, so that the bit stays out of the"
            + " template: feed slowly and take it sideways in light bites.");
    if (!draft.templateServes()) {
      draft.say(
          "The template is too thin for the bearing; take one of at least "
              + draft.atLeast(draft.contact())
              + ".");
    }
  }

  private void ofUnknownLength() {
    List<Double> depths = draft.depths(0, depth);
    double first = depths.get(0);
    draft.stage(0, depths, Riding.TEMPLATE, at -> true);
    draft.saySpacers(depths, "Bearing on the template");
    if (wider < -SetupDraft.ROUNDING) {
      draft.say(
          "The bit's cutting edge must be no longer than the first pass is deep, or it cuts the"
              + " template; measure it.");
      return;
    }
    double above = first - draft.contact();
    draft.say(
        "Measure the bit's cutting edge: the template must be at least as thick as that length "
            + (above >= 0 ? "less " : "and ")
            + draft.print(Math.abs(above))
            + ", or the bearing is above it in the first pass; and the edge must be "
            + draft.atLeast(depth)
            + " long or more for the whole depth.");
  }

  /** Stock thicker than the bit: on the template as deep as it goes, then on the edge just cut. */
  private void thickStock(double length) {
    onTemplate(length, length);
    double overlap = draft.practice("overlap");
    double rest = depth - length + overlap;
    boolean turns =
        draft.tool().seat() == Bit.BearingSeat.BOTH
            && draft.request().through()
            && rest <= length + SetupDraft.ROUNDING;
    if (turns) {
      boolean held = length - overlap >= draft.contact() - SetupDraft.ROUNDING;
      draft.stage(0, List.of(rest), Riding.ROUTED_EDGE_TURNED, at -> held);
      draft.say(
          "The cut is "
              + draft.print(depth)
              + " deep and the cutting edge "
              + draft.print(length)
              + " long: then take the template off, turn the work over and, from face "
              + draft.request().face().other()
              + ", cut the last "
              + draft.print(rest)
              + " with the bearing at the tip on the edge already cut.");
      return;
    }
    List<Double> depths = draft.depths(length, depth);
    startOnTheEdge(depths, length);
    draft.stage(length, depths, Riding.ROUTED_EDGE, at -> at - length >= heldOnEdge());
    draft.saySpacers(depths, "Template off, bearing on the edge already cut");
    draft.say(
        "The cut is "
            + draft.print(depth)
            + " deep and the cutting edge "
            + draft.print(length)
            + " long, so the last "
            + draft.print(depth - length)
            + " follow the edge already cut, as far as the bit reaches below the base"
            + (draft.request().through()
                ? "; or turn the work over and cut them from face "
                    + draft.request().face().other()
                    + " with a bit that has its bearing at the tip and a cutting edge of at least "
                    + draft.atLeast(rest)
                    + "."
                : "."));
  }

  /** The first of these passes goes down until the bearing has its contact, where a pass may. */
  private void startOnTheEdge(List<Double> depths, double length) {
    double wanted = length + Math.min(draft.contact(), draft.deepestPass());
    if (depths.get(0) < wanted) {
      depths.set(0, wanted);
    }
  }

  private double heldOnEdge() {
    return draft.contact() - SetupDraft.ROUNDING;
  }
}
