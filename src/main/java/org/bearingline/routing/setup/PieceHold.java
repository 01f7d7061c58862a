package org.bearingline.routing.setup;

import java.util.Objects;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Practice;

/**
 * Whether a piece is large enough to be held while it is routed.
 *
 * @param length the longer side of the piece, mm
 * @param width the shorter side, mm
 * @param leastLength mm that hand-fed work is long at least
 * @param safe whether the piece itself is that long and wider than what hands can hold
 * @param sentence what to do, for the card
 */
public record PieceHold(
    double length, double width, double leastLength, boolean safe, String sentence) {

  public PieceHold {
    Objects.requireNonNull(sentence);
  }

  /** For a piece of the given sides in mm, in any order, both more than 0. */
  public static PieceHold of(double side, double otherSide, Units units) {
    Checks.above0("length", side);
    Checks.above0("width", otherSide);
    double length = Math.max(side, otherSide);
    double width = Math.min(side, otherSide);
    Practice practice = SetupPractice.shipped();
    double least = practice.mm("least-length", units);
    double heldLength = practice.mm("held-length");
    double heldWidth = practice.mm("held-width");
    String size = Length.printRough(length, units) + " × " + Length.printRough(width, units);
    if (length <= heldLength && width <= heldWidth) {
      return new PieceHold(
          length,
          width,
          least,
          false,
          "A piece of "
              + size
              + " is too small for hands: rout it on a blank at least "
              + Length.printAtLeast(least, units)
              + " long and saw it off last.");
    }
    if (length < least) {
      return new PieceHold(
          length,
          width,
          least,
          false,
          "A piece of "
              + size
              + " is shorter than the "
              + Length.printRough(least, units)
              + " that hand-fed work wants: rout it on a longer blank and saw it off last, or hold"
              + " it in a jig.");
    }
    return new PieceHold(
        length,
        width,
        least,
        true,
        "The piece is long enough to be held; keep it clamped or taped down at both ends.");
  }
}
