package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Where a frame's opening lies along a stile. The stile's groove is fully deep from the floor of
 * the bottom rail's groove to the floor of the top rail's, so that the panel's corners go in, and
 * runs out on the cutter's circle before the stile's ends, where it would show.
 *
 * @param foot mm from the stile's foot to the opening
 * @param head mm from the opening to the stile's top
 * @param depth of the groove, mm
 * @param horns mm by which the stile is longer than rails and opening together
 */
public record StilePlace(double foot, double head, double depth, double horns) {

  /** A stile may be this much shorter than what it holds, mm. */
  private static final double SAME_LENGTH = 0.05;

  /**
   * Widths of the rails where they meet the stile, mm; empty for one that no part is named for.
   *
   * @param foot mm from the stile's foot to the opening; empty to take it from the rails
   */
  public record Known(OptionalDouble foot, OptionalDouble bottomRail, OptionalDouble topRail) {}

  /**
   * The place of an opening on a stile without tenons.
   *
   * @param height mm of the opening at this stile
   * @throws Problem where the stile is curved, or too short for the opening and its rails
   */
  public static StilePlace of(
      FrameMember stile, double height, Known known, SlotCutter slot, Units units) {
    if (!stile.isStraight()) {
      throw new Problem(
          Place.field(stile.part().name()),
          "a stile's inner edge is straight, and the grooved edge of this part is not");
    }
    double length = stile.length();
    double rails = known.bottomRail().orElse(0) + known.topRail().orElse(0);
    double over = length - height - rails;
    if (over < -SAME_LENGTH) {
      throw tooShort(stile, height, rails, units);
    }
    boolean both = known.bottomRail().isPresent() && known.topRail().isPresent();
    double foot = known.foot().orElseGet(() -> usualFoot(length, height, known, over));
    double head = length - height - foot;
    if (foot < slot.depth() || head < slot.depth()) {
      throw new Problem(
          Place.field(stile.part().name()),
          "an opening "
              + Length.print(height, units)
              + " high leaves "
              + Length.print(Math.max(0, foot), units)
              + " of this stile below it and "
              + Length.print(Math.max(0, head), units)
              + " above, too little for the groove; make the stile longer or the opening lower");
    }
    return new StilePlace(
        foot, head, slot.depth(), both && known.foot().isEmpty() && over > SAME_LENGTH ? over : 0);
  }

  private static double usualFoot(double length, double height, Known known, double over) {
    if (known.bottomRail().isPresent() && known.topRail().isPresent()) {
      return known.bottomRail().getAsDouble() + over / 2;
    }
    if (known.bottomRail().isPresent()) {
      return known.bottomRail().getAsDouble();
    }
    return known.topRail().isPresent()
        ? length - height - known.topRail().getAsDouble()
        : (length - height) / 2;
  }

  private static Problem tooShort(FrameMember stile, double height, double rails, Units units) {
    return new Problem(
        Place.field(stile.part().name()),
        "this stile is "
            + Length.print(stile.length(), units)
            + " long, and the opening of "
            + Length.print(height, units)
            + (rails > 0
                ? " with its rails of " + Length.print(rails, units) + " together takes "
                : " takes ")
            + Length.print(height + rails, units)
            + "; make the stile longer or the opening lower");
  }

  /** mm from the foot to where the groove is fully deep. */
  public double beforeFoot() {
    return foot - depth;
  }

  /** The same from the top. */
  public double beforeHead() {
    return head - depth;
  }

  /** Of a part that is both stiles. */
  public static final String BOTH_HANDS =
      "Mark foot and show face: the right stile is the mirror image, grooved as far from its own show"
          + " face.";

  /**
   * What the maker has to know of where it lies.
   *
   * @param footLeft whether the foot is on the left of the part's drawing
   */
  public List<String> sentences(SlotCutter slot, boolean through, boolean footLeft, Units units) {
    List<String> said = new ArrayList<>();
    said.add(
        "The opening is from "
            + Length.print(foot, units)
            + " off the foot"
            + (footLeft ? ", left here, to " : ", right here, to ")
            + Length.print(head, units)
            + " off the top."
            + (through
                ? ""
                : " Set stops: the groove is fully deep from "
                    + Length.print(foot - slot.depth(), units)
                    + " to "
                    + Length.print(head - slot.depth(), units)
                    + "; the cutter's round runs out "
                    + Length.print(tail(slot), units)
                    + " beyond."));
    if (horns > 0) {
      said.add(
          "The stile is "
              + Length.print(horns, units)
              + " longer than rails and opening: half of that stands out at each end.");
    }
    return said;
  }

  /** √(r² − R²): how far the cutter still cuts past where it is fully in, along a straight edge. */
  private static double tail(SlotCutter slot) {
    double out = slot.cutter().radius();
    double rides = slot.bearing().radius();
    return Math.sqrt(out * out - rides * rides);
  }

  /**
   * Checks that an upright with shoulders, a muntin, fills the opening's side.
   *
   * @throws Problem where its shoulders stand closer or wider than the rails
   */
  public static void checkMuntin(FrameMember muntin, double height, Units units) {
    double between = muntin.between();
    if (Math.abs(between - height) > SAME_LENGTH) {
      throw new Problem(
          Place.field(muntin.part().name()),
          "this upright is "
              + Length.print(between, units)
              + " long between its shoulders and the rails stand "
              + Length.print(height, units)
              + " apart at its edge; give both the same measure");
    }
  }
}
