package org.bearingline.kit;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Whether a cutter and a follower can work together. */
public final class Pairing {

  /** Tells a collar that just holds its bit from one that does not, beyond rounding; mm. */
  private static final double ROUNDING = 1e-6;

  private Pairing() {}

  /**
   * Sentences of caution, none for an untroubled pair.
   *
   * @throws Problem where the bit does not pass through the collar
   */
  public static List<String> check(Cutter cutter, Follower follower) {
    List<String> cautions = new ArrayList<>();
    if (follower instanceof Follower.Collar collar) {
      checkCollar(cutter, collar, cautions);
    }
    return cautions;
  }

  private static void checkCollar(Cutter cutter, Follower.Collar collar, List<String> cautions) {
    String bit = both(cutter.diameter());
    String outside = both(collar.diameter());
    if (collar.diameter() <= cutter.diameter() + ROUNDING) {
      throw new Problem(
          Place.field("collar"),
          "the "
              + outside
              + " collar is no wider than its "
              + bit
              + " bit, which cannot pass through it; choose a wider collar or a smaller bit");
    }
    double clearance = chipClearance();
    if (collar.insideDiameter().isEmpty()) {
      cautions.add(
          "Check that the "
              + bit
              + " bit passes through the "
              + outside
              + " collar with "
              + both(clearance)
              + " of room all round for chips.");
      return;
    }
    double inside = collar.insideDiameter().getAsDouble();
    if (inside <= cutter.diameter() + ROUNDING) {
      throw new Problem(
          Place.field("collar"),
          "the "
              + outside
              + " collar is "
              + both(inside)
              + " wide inside, so the "
              + bit
              + " bit does not pass; choose a wider collar or a smaller bit");
    }
    if (inside < cutter.diameter() + 2 * clearance - ROUNDING) {
      cautions.add(
          "The "
              + bit
              + " bit has "
              + both((inside - cutter.diameter()) / 2)
              + " of room in the "
              + outside
              + " collar, less than the "
              + both(clearance)
              + " that lets chips out: take light passes and clear it often.");
    }
  }

  /** Both units, for a collar is bought in either. */
  private static String both(double mm) {
    String inches = Length.print(mm, Units.INCH);
    String metric = Length.print(mm, Units.MM);
    // The one in which it was made stands first.
    return Length.isExact(mm, Units.MM) && !Length.isExact(mm, Units.INCH)
        ? metric + " (" + inches + ")"
        : inches + " (" + metric + ")";
  }

  private static double chipClearance() {
    return Length.parse(
        FactTable.read(Pairing.class, "pairing.tsv").rows().get(0).text("clearance"));
  }
}
