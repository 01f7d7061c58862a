package org.bearingline.wood;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * How a width across the fibres changes with moisture, as shares of the width at assembly. Wood
 * Handbook FPL-GTR-190 (2010), chapter 13: within 6 to 14 % equation (13-2), ΔD = D C (M₂ − M₁);
 * beyond it equation (13-3), ΔD = D (M₂ − M₁) / (3000/S − 30 + M₁), with S the shrinkage from green
 * to oven-dry in percent. The handbook notes that ordinary lumber of mixed grain moves less than
 * that.
 *
 * @param shrink share by which the width falls from assembly to driest, 0 or more
 * @param growth share by which it rises from assembly to dampest, 0 or more
 */
public record Movement(double shrink, double growth) {

  /** Of sheets. */
  public static final Movement NONE = new Movement(0, 0);

  /** Where the coefficients of equation (13-2) hold, percent. */
  private static final double LOW = 6;

  private static final double HIGH = 14;

  public Movement {
    if (!(shrink >= 0 && shrink < 1 && growth >= 0)) {
      throw new IllegalArgumentException("shrink and growth are shares, got " + shrink);
    }
  }

  /**
   * Of a wood through a year.
   *
   * @param assembled moisture in percent when the width was cut, within the range
   * @throws Problem where the range leaves 6 to 14 % and the wood's shrinkage is not known, or the
   *     moisture at assembly lies outside the range
   */
  public static Movement of(Species species, Cut cut, double assembled, MoistureRange range) {
    Moisture.check("moisture at assembly", assembled);
    if (!species.solid()) {
      return NONE;
    }
    if (!range.contains(assembled)) {
      throw new Problem(
          Place.field("moisture at assembly"),
          "wood of "
              + Moisture.plain(assembled)
              + " % is not as dry or damp as it will be, "
              + Moisture.plain(range.driest())
              + " to "
              + Moisture.plain(range.dampest())
              + " %; let it settle in the room or widen the humidity range");
    }
    return new Movement(
        Math.max(0, -share(species, cut, assembled, range.driest())),
        Math.max(0, share(species, cut, assembled, range.dampest())));
  }

  /** The change in mm of {@code width} mm from one moisture in percent to another; signed. */
  public static double change(double width, Species species, Cut cut, double from, double to) {
    Moisture.check("moisture", from);
    Moisture.check("moisture", to);
    return species.solid() ? width * share(species, cut, from, to) : 0;
  }

  private static double share(Species species, Cut cut, double from, double to) {
    if (Math.min(from, to) >= LOW && Math.max(from, to) <= HIGH) {
      return species.coefficient(cut) * (to - from);
    }
    double shrinkage =
        species
            .shrinkage(cut)
            .orElseThrow(
                () ->
                    new Problem(
                        Place.field("wood"),
                        "the movement of "
                            + species.name()
                            + " is known from 6 to 14 % moisture only, not from "
                            + Moisture.plain(from)
                            + " to "
                            + Moisture.plain(to)
                            + " %; narrow the humidity range or choose another wood"));
    return (to - from) / (3000 / shrinkage - 30 + from);
  }

  /** mm that a width of {@code width} mm at assembly loses to its driest. */
  public double shrinkOf(double width) {
    return width * shrink;
  }

  /** mm that a width of {@code width} mm at assembly gains to its dampest. */
  public double growthOf(double width) {
    return width * growth;
  }
}
